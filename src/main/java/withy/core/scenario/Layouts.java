package withy.core.scenario;

import java.util.ArrayList;
import java.util.List;
import withy.core.geometry.Bearing;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;
import withy.core.waterway.Danger;
import withy.core.waterway.DangerKind;
import withy.core.waterway.Fairway;
import withy.core.waterway.Keel;

/**
 * The shapes of water that the blueprints name, each drawn by chance. Lengths are metres; flats lie
 * so high that the keel grounds on them at the tide there is, fairways so deep that she has her
 * margin all over.
 */
final class Layouts {
  private static final double REACH = 860;
  private static final double LAND = -4;

  private final Chance chance;
  private final Frame frame;
  private final Unevenness broad;
  private final Unevenness fine;

  /** Metres below datum that are too shallow for the keel, and those along the edges. */
  private final double flats;

  private final double edge;

  private Layouts(Chance chance, Keel keel, double tide) {
    this.chance = chance;
    this.frame = new Frame(Seabed.MIDDLE, Bearing.of(chance.below(360)));
    this.broad = new Unevenness(chance.seed(), 260);
    this.fine = new Unevenness(chance.seed(), 90);
    this.flats = keel.draught() - tide - 0.9;
    this.edge = keel.draught() + keel.margin() - tide + 0.7;
  }

  static Seabed of(Blueprint blueprint, Chance chance, Keel keel, double tide) {
    Layouts layouts = new Layouts(chance, keel, tide);
    return switch (blueprint) {
      case HARBOUR_ENTRANCE -> layouts.harbourEntrance();
      case RIVER -> layouts.river();
      case ESTUARY -> layouts.estuary();
      case FORK -> layouts.fork();
      case CONVERGING -> layouts.converging();
      case OFFSHORE_SHOAL -> layouts.offshoreShoal();
      case ISOLATED_ROCK -> layouts.isolatedRock();
      case COASTAL_PASSAGE -> layouts.coastalPassage();
    };
  }

  private Seabed river() {
    double swing = chance.oneIn(2) ? 1 : -1;
    Fairway main =
        fairway(
            "main",
            width(),
            List.of(
                at(-REACH, 0),
                at(-520, swing * between(60, 130)),
                at(-170, -swing * between(90, 170)),
                at(190, swing * between(90, 170)),
                at(540, -swing * between(50, 120)),
                at(REACH, 0)));
    double shore = main.width() / 2 + between(80, 130);
    return new Seabed(place -> bank(main.line().foot(place).distance(), shore, place))
        .cut(channel(main));
  }

  private Seabed harbourEntrance() {
    Fairway main =
        fairway(
            "main",
            width(),
            List.of(
                at(-REACH, between(-160, 160)),
                at(-380, between(-60, 60)),
                at(-60, 0),
                at(300, between(-50, 50)),
                at(620, between(-90, 90))));
    double shore = main.width() / 2 + between(70, 110);
    double coast = between(-120, -60);
    return new Seabed(
            place -> {
              double inland = frame.inland(place) + 70 * broad.at(place.x(), place.y());
              double off = main.line().foot(place).distance();
              return inland > coast
                  ? bank(off, shore, place)
                  : Math.min(sea(coast - inland), shelf(coast - inland, place));
            })
        .cut(channel(main));
  }

  private Seabed estuary() {
    Fairway main =
        fairway(
            "main",
            width(),
            List.of(
                at(-REACH, 0),
                at(-250, 0),
                at(120, between(-180, 180)),
                at(480, between(-120, 120)),
                at(REACH, between(-60, 60))));
    double mouth = between(560, 680);
    Danger bar =
        new Danger(DangerKind.BAR, at(between(-640, -560), 0), 190, Math.rint(10 * edge + 1) / 10);
    return new Seabed(
            place -> {
              double inland = frame.inland(place);
              double shore = mouth - 0.32 * (inland + REACH) + 60 * broad.at(place.x(), place.y());
              double seaward = sea(-620 - inland);
              return Math.max(seaward, bank(Math.abs(frame.abeam(place)), shore, place));
            })
        .cut(channel(main))
        .with(bar);
  }

  private Seabed fork() {
    double swing = chance.oneIn(2) ? 1 : -1;
    double wide = width();
    Position parting = at(-120, between(-40, 40));
    Fairway main =
        fairway(
            "main",
            wide,
            List.of(
                at(-REACH, between(-60, 60)),
                at(-460, between(-60, 60)),
                parting,
                at(180, swing * 150),
                at(520, swing * between(230, 300)),
                at(REACH, swing * between(230, 320))));
    Fairway second =
        fairway(
            "secondary",
            wide * 0.8,
            List.of(
                parting,
                at(180, -swing * 140),
                at(520, -swing * between(230, 300)),
                at(REACH, -swing * between(230, 320))));
    double shore = wide / 2 + between(80, 120);
    return new Seabed(
            place ->
                bank(
                    Math.min(
                        main.line().foot(place).distance(), second.line().foot(place).distance()),
                    shore,
                    place))
        .cut(channel(main))
        .cut(channel(second));
  }

  private Seabed converging() {
    double swing = chance.oneIn(2) ? 1 : -1;
    double wide = width();
    Position meeting = at(150, 0);
    Fairway main =
        fairway(
            "main",
            wide,
            List.of(
                at(-REACH, swing * between(200, 260)),
                at(-400, swing * between(180, 240)),
                at(-80, swing * 90),
                meeting,
                at(500, between(-60, 60)),
                at(REACH, 0)));
    Fairway other =
        fairway(
            "other",
            wide * 0.85,
            List.of(
                at(-REACH, -swing * between(230, 300)),
                at(-400, -swing * between(200, 260)),
                at(-80, -swing * 110),
                meeting));
    double shore = wide / 2 + between(90, 130);
    return new Seabed(
            place ->
                bank(
                    Math.min(
                        main.line().foot(place).distance(), other.line().foot(place).distance()),
                    shore,
                    place))
        .cut(channel(main))
        .cut(channel(other));
  }

  private Seabed offshoreShoal() {
    double deep = between(9, 16);
    Danger shoal =
        new Danger(
            DangerKind.SHOAL,
            middle(120),
            between(200, 300),
            Math.rint(10 * flats - between(0, 8)) / 10);
    return new Seabed(place -> deep + 2.2 * broad.at(place.x(), place.y()) + fineness(place))
        .with(shoal);
  }

  private Seabed isolatedRock() {
    double deep = between(7, 14);
    Danger rock =
        new Danger(
            chance.oneIn(4) ? DangerKind.WRECK : DangerKind.ROCK,
            middle(150),
            between(70, 100),
            Math.rint(10 * flats - between(2, 14)) / 10);
    return new Seabed(place -> deep + 2 * broad.at(place.x(), place.y()) + fineness(place))
        .with(rock);
  }

  private Seabed coastalPassage() {
    Fairway main =
        fairway(
            "main",
            width() * 1.4,
            List.of(
                at(-REACH, between(-70, 30)),
                at(-320, between(-40, 90)),
                at(260, between(-90, 40)),
                at(REACH, between(-40, 60))));
    double coast = between(300, 380);
    double outer = between(150, 200);
    return new Seabed(
            place -> {
              double shore = coast - frame.abeam(place) + 90 * broad.at(place.x(), place.y());
              double seaward = -frame.abeam(place) - outer - main.width();
              double sea = Math.max(flats + 0.3 * fine.at(place.x(), place.y()), 0.025 * seaward);
              return Math.min(sea, flats * Unevenness.smooth(shore / 160) + shore / 60 - 1.2);
            })
        .cut(channel(main));
  }

  /** Flats beside a channel, then the bank and the land behind it. */
  private double bank(double off, double shore, Position place) {
    double from = shore + 28 * fine.at(place.x(), place.y());
    double up = Unevenness.smooth((off - from) / 70);
    double mud = flats + 0.35 * fine.at(place.x(), place.y());
    return Math.min(flats + 0.3, mud + (LAND - mud) * up + 0.4 * up * fineness(place));
  }

  /** The open sea, deeper the farther from the coast. */
  private static double sea(double off) {
    return off <= 0 ? Double.NEGATIVE_INFINITY : 1 + off / 60;
  }

  /** Shallow water before a coast. */
  private double shelf(double off, Position place) {
    double out = Unevenness.smooth((off - 300) / 250);
    double mud = flats + 0.3 * fine.at(place.x(), place.y());
    return off <= 40 ? Math.min(mud, off / 20 - 2) : mud + (sea(off) - mud) * out;
  }

  private double fineness(Position place) {
    return 0.5 * fine.at(place.x(), place.y());
  }

  private Channel channel(Fairway fairway) {
    return new Channel(fairway, edge + between(15, 40) / 10, edge);
  }

  private Fairway fairway(String id, double width, List<Position> corners) {
    List<Position> line = new ArrayList<>();
    for (Position each : new Polyline(corners).rounded().points()) {
      line.add(each.rounded());
    }
    return new Fairway(id, new Polyline(line), width);
  }

  private Position at(double inland, double abeam) {
    return frame.place(inland, abeam).rounded();
  }

  /** The centre of a cell, since the depth over a danger smaller than a cell is that of one. */
  private Position middle(int stray) {
    Position near = at(between(-stray, stray), between(-stray, stray));
    return new Position(
        Seabed.CELL * Math.rint(near.x() / Seabed.CELL),
        Seabed.CELL * Math.rint(near.y() / Seabed.CELL));
  }

  private double width() {
    return between(80, 120);
  }

  private double between(int least, int most) {
    return chance.between(least, most);
  }
}
