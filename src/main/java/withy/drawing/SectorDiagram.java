package withy.drawing;

import withy.core.geometry.Bearing;
import withy.core.geometry.Sector;
import withy.core.light.LightColour;
import withy.core.light.LightSector;
import withy.core.scenario.SectorLookout;
import withy.core.scenario.SectorQuestion;

/**
 * A light with its sectors as a chart has them, north up: dashed lines from the light along the
 * limits, a letter of the colour between. Sectors are given from seaward, so each lies on the other
 * side of the light than its bearings point.
 */
final class SectorDiagram {
  private static final double SIZE_OF_LETTERS = 16;

  /** Within so many degrees of its middle the boat would cover the letter of a sector. */
  private static final double COVERED = 16;

  private final SvgWriter svg = SvgWriter.scaled(ChartDisc.SIZE, ChartDisc.SIZE);
  private final ChartDisc disc = ChartDisc.on(svg, 1);
  private final SectorLookout lookout;
  private final SectorLayout layout;

  private SectorDiagram(SectorLookout lookout) {
    this.lookout = lookout;
    this.layout = SectorLayout.of(lookout);
  }

  /** What the chart shows; where the rule of the region is asked for, the white sector alone. */
  static Svg question(SectorLookout lookout, Lettering lettering) {
    SectorDiagram diagram = new SectorDiagram(lookout);
    diagram.ring(lettering);
    diagram.sectors(false);
    diagram.light();
    return diagram.svg.finish();
  }

  /** All sectors in their colours, the boat, and the line on which she has the light. */
  static Svg answered(SectorLookout lookout, Lettering lettering) {
    SectorDiagram diagram = new SectorDiagram(lookout);
    diagram.ring(lettering);
    diagram.sectors(true);
    diagram.boat();
    diagram.light();
    return diagram.svg.finish();
  }

  private void ring(Lettering lettering) {
    if (leadsIn()) {
      disc.quarters(lettering);
    } else {
      disc.ring(lettering);
    }
  }

  private boolean leadsIn() {
    return lookout.question() == SectorQuestion.FAIRWAY
        || lookout.question() == SectorQuestion.LIMIT;
  }

  private void sectors(boolean answered) {
    for (LightSector each : lookout.sectors().sectors()) {
      if (answered || !leadsIn() || each.colour() == LightColour.WHITE) {
        sector(each, answered);
      }
    }
  }

  private void sector(LightSector sector, boolean answered) {
    Sector ground = fromTheLight(sector.bearings());
    PathData arc = arc(ground);
    if (answered) {
      Pen.band(svg, arc, Palette.INK, 9);
      Pen.band(svg, arc, paint(sector.colour()), 6.6);
    } else {
      Pen.line(svg, arc, Palette.SECOND_INK, 1);
    }
    limit(ground.from());
    limit(ground.to());
    boolean covered =
        answered && !leadsIn() && ground.middle().angleTo(boatFromTheLight()) < COVERED;
    Vec middle = layout.at(ground.middle(), covered ? layout.inner() : layout.letter());
    Pen.letters(svg, sector.colour().abbreviation(), middle, SIZE_OF_LETTERS, Palette.INK);
  }

  /** Sectors wear the colours of paint: on paper the colour of a white light would be cream. */
  private static Palette paint(LightColour colour) {
    return switch (colour) {
      case RED -> Palette.RED;
      case GREEN -> Palette.GREEN;
      default -> Palette.WHITE;
    };
  }

  private void limit(Bearing direction) {
    Vec foot = layout.at(direction, 9);
    Vec end = layout.at(direction, layout.end());
    Pen.dashed(svg, PathData.line(foot.x(), foot.y(), end.x(), end.y()), Palette.INK, 1.2, "5 3");
  }

  private Bearing boatFromTheLight() {
    return lookout.bearing().reciprocal();
  }

  private void boat() {
    Vec at = layout.at(boatFromTheLight(), layout.boat());
    Vec tip = layout.at(boatFromTheLight(), 12);
    Pen.line(svg, PathData.line(at.x(), at.y(), tip.x(), tip.y()), Palette.INK, 1.8);
    disc.boat(at, lookout.bearing(), 0);
    figure();
  }

  /** The bearing beside the boat's line, in front of whatever else is there. */
  private void figure() {
    Vec beside = Vec.along(lookout.bearing().plus(outwards() ? 90 : -90), 24);
    Vec middle = layout.at(boatFromTheLight(), layout.figure()).plus(beside);
    svg.element(
        "rect",
        "x",
        middle.x() - 19,
        "y",
        middle.y() - 10,
        "width",
        38,
        "height",
        20,
        "fill",
        Palette.CHART_WATER,
        "fill-opacity",
        0.85);
    Pen.letters(svg, degrees(), middle, 15, Palette.INK);
  }

  /** Away from the middle of a fairway, so that the figure keeps off its sectors. */
  private boolean outwards() {
    return leadsIn() && lookout.white().bearings().middle().relativeTo(lookout.bearing()) > 0;
  }

  private String degrees() {
    long whole = Math.round(lookout.bearing().degrees()) % 360;
    return (whole < 100 ? "0" : "") + (whole < 10 ? "0" : "") + whole + "\u00b0";
  }

  /** A star where the light stands. */
  private void light() {
    PathData star = new PathData();
    for (int i = 0; i < 10; i++) {
      Vec point = layout.at(Bearing.of(36.0 * i), i % 2 == 0 ? 8 : 3.4);
      if (i == 0) {
        star.move(point.x(), point.y());
      } else {
        star.line(point.x(), point.y());
      }
    }
    Pen.area(svg, star.close(), Palette.INK, Palette.INK, 1);
  }

  private static Sector fromTheLight(Sector seaward) {
    return new Sector(seaward.from().reciprocal(), seaward.to().reciprocal());
  }

  private PathData arc(Sector ground) {
    int steps = (int) Math.ceil(ground.width() / 60);
    Vec first = layout.at(ground.from(), layout.arc());
    PathData arc = PathData.at(first.x(), first.y());
    for (int i = 1; i <= steps; i++) {
      Vec next = layout.at(ground.from().plus(ground.width() * i / steps), layout.arc());
      arc.arc(layout.arc(), next.x(), next.y());
    }
    return arc;
  }
}
