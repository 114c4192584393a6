package withy.core.hydrography;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.Chance;
import withy.core.geometry.Bearing;
import withy.core.geometry.Polyline;
import withy.core.geometry.Polyline.Foot;
import withy.core.geometry.Position;
import withy.core.mark.Practice;
import withy.core.waterway.DepthField;
import withy.core.waterway.Fairway;
import withy.core.waterway.Keel;
import withy.core.waterway.Waterway;

/**
 * Waters in which two channels run side by side for a long way with a bank between them, each with
 * marks of its own, so that a boat in one has marks of the other close at hand. Inland they meet,
 * or to seaward they part.
 */
public final class NeighbouringChannels {
  private static final double CELL = 20;
  private static final int COLUMNS = 100;
  private static final double LAND = -4;

  /** Metres over which the side of a channel rises, and over which the shore does. */
  private static final double BANK = 30;

  private static final double SHORE = 90;

  /** Metres from the middle of the chart, inland where the channels meet, and half their gap. */
  private static final int[][] GAPS = {
    {-1000, 135}, {-640, 122}, {-260, 118}, {80, 116}, {300, 96}, {460, 40}, {570, 0}
  };

  private static final int[] TRUNK = {760, 1000};

  private final Chance chance;
  private final Frame frame;
  private final Unevenness fine;
  private final double tide;
  private final double flats;
  private final double edge;
  private final double deepest;
  private final double shore;

  private NeighbouringChannels(Chance chance, Keel keel) {
    this.chance = chance;
    double middle = CELL * (COLUMNS - 1) / 2;
    this.frame = new Frame(new Position(middle, middle), Bearing.of(chance.below(360)));
    this.fine = new Unevenness(chance.seed(), 90);
    this.tide = chance.below(13) / 10.0;
    this.flats = keel.draught() - tide - 0.9;
    this.edge = keel.draught() + keel.margin() - tide + 0.7;
    this.deepest = edge + chance.between(15, 40) / 10.0;
    this.shore = chance.between(90, 140);
  }

  /** A water of this kind, marked as a practice marks it; both its fairways keep a keel afloat. */
  public static Waterway water(Practice practice, Keel keel, Chance chance) {
    NeighbouringChannels drawn = new NeighbouringChannels(chance, keel);
    List<Fairway> fairways = drawn.fairways();
    Waterway bare =
        new Waterway(drawn.depths(fairways), drawn.tide, fairways, List.of(), List.of());
    return NeighbouringMarks.of(practice, bare, keel, chance);
  }

  /** The main one first, which goes on where the other one meets it or leaves it. */
  private List<Fairway> fairways() {
    boolean meeting = chance.oneIn(2);
    int hand = chance.oneIn(2) ? 1 : -1;
    List<Position> main = new ArrayList<>();
    List<Position> other = new ArrayList<>();
    for (int[] gap : GAPS) {
      double inland = meeting ? gap[0] : -gap[0];
      double bend = gap[1] == 0 ? 0 : chance.between(-55, 55);
      main.add(frame.place(inland, bend + hand * gap[1]));
      other.add(frame.place(inland, bend - hand * gap[1]));
    }
    for (int inland : TRUNK) {
      main.add(frame.place(meeting ? inland : -inland, chance.between(-70, 70)));
    }
    if (!meeting) {
      Collections.reverse(main);
      Collections.reverse(other);
    }
    double width = chance.between(76, 96);
    return List.of(fairway("main", main, width), fairway("other", other, width - 8));
  }

  private static Fairway fairway(String id, List<Position> corners, double width) {
    List<Position> line = new ArrayList<>();
    new Polyline(corners).rounded().points().forEach(each -> line.add(each.rounded()));
    return new Fairway(id, new Polyline(line), width);
  }

  private DepthField depths(List<Fairway> fairways) {
    double[] depths = new double[COLUMNS * COLUMNS];
    for (int i = 0; i < depths.length; i++) {
      depths[i] = depth(new Position(CELL * (i % COLUMNS), CELL * (i / COLUMNS)), fairways);
    }
    return new DepthField(new Position(0, 0), CELL, COLUMNS, depths);
  }

  private double depth(Position place, List<Fairway> fairways) {
    double off = Double.POSITIVE_INFINITY;
    @Nullable Fairway near = null;
    for (Fairway each : fairways) {
      Foot foot = each.line().foot(place);
      double outside = foot.distance() - each.width() / 2;
      near = outside < off ? each : near;
      off = Math.min(off, outside);
    }
    double floor = floor(place, off);
    if (near == null || off >= BANK) {
      return floor;
    }
    if (off > 0) {
      return edge + (floor - edge) * Unevenness.smooth(off / BANK);
    }
    double across = 1 + off / (near.width() / 2);
    return deepest - (deepest - edge) * across * across;
  }

  /** Flats, then the shore behind them. */
  private double floor(Position place, double off) {
    double uneven = fine.at(place.x(), place.y());
    double mud = flats + 0.35 * uneven;
    double up = Unevenness.smooth((off - shore - 28 * uneven) / SHORE);
    return mud + (LAND - mud) * up;
  }
}
