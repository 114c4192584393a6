package withy.core.scenario;

import java.util.List;
import java.util.Optional;
import withy.core.geometry.Polyline;
import withy.core.waterway.Danger;
import withy.core.waterway.PlacedMark;

/**
 * Tracks past a danger that are drawn on the chart.
 *
 * @param danger that is to be cleared
 * @param mark of the danger
 * @param cables that a track shall keep off both; 0 where it is asked how far off it keeps
 * @param tracks in the order of their letters
 */
public record Clearance(Danger danger, PlacedMark mark, double cables, List<PlottedTrack> tracks) {
  /**
   * Metres in a cable, the tenth of a nautical mile of 1852 m (INT 1, B 46; nautical mile: BIPM, SI
   * Brochure, 9th edition 2019, table 8 of the 8th).
   */
  public static final double CABLE = 185.2;

  public Clearance {
    tracks = List.copyOf(tracks);
  }

  /** The track that somebody plotted with a purpose; empty where none did. */
  public Optional<PlottedTrack> track(PlottedTrack.Purpose purpose) {
    return tracks.stream().filter(each -> each.purpose() == purpose).findFirst();
  }

  /** Metres from a track to the nearer of danger and mark. */
  public double off(Polyline track) {
    return Math.min(track.foot(danger.at()).distance(), track.foot(mark.position()).distance());
  }
}
