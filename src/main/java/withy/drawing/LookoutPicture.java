package withy.drawing;

import withy.core.scenario.Lookout;
import withy.core.scenario.RangeLookout;
import withy.core.scenario.SectorLookout;

/** The picture that belongs to a light ashore. */
final class LookoutPicture {
  private LookoutPicture() {}

  static Svg of(Lookout lookout, Lettering lettering, boolean answered) {
    if (lookout instanceof SectorLookout sectors) {
      return answered
          ? SectorDiagram.answered(sectors, lettering)
          : SectorDiagram.question(sectors, lettering);
    }
    if (lookout instanceof RangeLookout range) {
      return range.visibility() == null
          ? horizon(range, lettering, answered)
          : luminous(range, lettering, answered);
    }
    throw new IllegalArgumentException("no picture for " + lookout);
  }

  private static Svg horizon(RangeLookout range, Lettering lettering, boolean answered) {
    return answered ? HorizonDiagram.answered(range, lettering) : HorizonDiagram.question(range);
  }

  private static Svg luminous(RangeLookout range, Lettering lettering, boolean answered) {
    return answered ? RangeDiagram.answered(range, lettering) : RangeDiagram.question(lettering);
  }
}
