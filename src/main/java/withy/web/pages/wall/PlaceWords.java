package withy.web.pages.wall;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import withy.core.geometry.Position;
import withy.core.waterway.Danger;
import withy.core.waterway.DangerKind;
import withy.core.waterway.Fairway;
import withy.core.waterway.Keel;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Waterway;
import withy.wording.Wording;

/** What a place of the water is: how deep, in which fairway, on which danger, by which mark. */
final class PlaceWords {
  /** Metres within which a mark is meant. */
  private static final double BY = 45;

  /** Metres above datum from which it is land. */
  private static final double LAND = 2.5;

  private static final double DECIMETRES = 10;

  private final Wording wording;

  PlaceWords(Wording wording) {
    this.wording = wording;
  }

  List<String> of(Waterway water, Position place) {
    if (!water.depths().contains(place)) {
      return List.of(text("wall.off-chart"));
    }
    List<String> words = new ArrayList<>();
    words.add(depth(water, place));
    for (Fairway each : water.fairways()) {
      if (each.contains(place)) {
        words.add(fairway(each));
      }
    }
    for (Danger each : water.dangers()) {
      if (each.at().distanceTo(place) <= each.radius()) {
        words.add(danger(each));
      }
    }
    return words;
  }

  private String depth(Waterway water, Position place) {
    double charted = water.depths().depth(place);
    double stands = charted + water.tide();
    if (charted < -LAND) {
      return text("wall.land");
    }
    if (stands <= 0) {
      return text("wall.dry", metres(-charted));
    }
    String key =
        Keel.CRUISER.grounds(stands)
            ? "wall.too-shallow"
            : Keel.CRUISER.isSafe(stands) ? "wall.deep" : "wall.no-margin";
    return text(key, metres(stands), metres(Keel.CRUISER.draught()));
  }

  private String fairway(Fairway fairway) {
    return switch (fairway.id()) {
      case "main" -> text("wall.in-main");
      case "secondary" -> text("wall.in-secondary");
      default -> text("wall.in-other");
    };
  }

  private String danger(Danger danger) {
    double least = metres(Math.abs(danger.leastDepth()));
    String key = danger.leastDepth() < 0 ? "wall.danger-dries" : "wall.danger";
    return text(key, kind(danger.kind()), least);
  }

  private String kind(DangerKind kind) {
    return switch (kind) {
      case ROCK -> text("wall.rock");
      case WRECK -> text("wall.wreck");
      case SHOAL -> text("wall.shoal");
      case BAR -> text("wall.bar");
    };
  }

  /** The mark that is meant by a place. */
  static Optional<PlacedMark> mark(Waterway water, Position place) {
    return water.marks().stream()
        .filter(each -> each.position().distanceTo(place) <= BY)
        .min(Comparator.comparingDouble(each -> each.position().distanceTo(place)));
  }

  /** Whole decimetres, never more than there are. */
  static double metres(double value) {
    return Math.floor(value * DECIMETRES + 1e-9) / DECIMETRES;
  }

  private String text(String key, Object... arguments) {
    return wording.text("page." + key, arguments);
  }
}
