package withy.core.item;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Bearing;
import withy.core.geometry.Sector;
import withy.core.light.LightColour;
import withy.core.scenario.Scenario;
import withy.core.scenario.SectorLookout;
import withy.core.scenario.SectorQuestion;

/** What beliefs see of a light with sectors, or where they take its white sector to end. */
final class SectorBeliefs {
  /** The value of the option for a light that is not seen. */
  static final String OBSCURED = "obscured";

  private SectorBeliefs() {}

  /** M27: a bearing from seaward is taken for one from the light. */
  static @Nullable String fromTheLight(Scenario scenario, SectorLookout lookout) {
    Bearing turned = lookout.bearing().reciprocal();
    return lookout.question() == SectorQuestion.LIMIT
        ? degrees(turned)
        : value(lookout.sectors().seenOn(turned));
  }

  /** Takes a bearing relative to the bow for a true one. */
  static @Nullable String relativeReadAsTrue(Scenario scenario, SectorLookout lookout) {
    Bearing bow = scenario.situation().heading();
    return lookout.question() == SectorQuestion.BOW
        ? value(lookout.sectors().seenOn(lookout.bearing().plus(-bow.degrees())))
        : null;
  }

  /** Turns a bearing off the bow to the wrong hand. */
  static @Nullable String bowHandSwapped(Scenario scenario, SectorLookout lookout) {
    Bearing bow = scenario.situation().heading();
    double off = lookout.bearing().relativeTo(bow);
    return lookout.question() == SectorQuestion.BOW
        ? value(lookout.sectors().seenOn(bow.plus(-off)))
        : null;
  }

  /** Takes the colours at the sides of a fairway to be those of the other region. */
  static @Nullable String coloursSwapped(Scenario scenario, SectorLookout lookout) {
    return switch (lookout.question()) {
      case BEARING, BOW -> null;
      case FAIRWAY -> value(lookout.seen().map(SectorBeliefs::other));
      case LIMIT -> degrees(otherLimit(lookout));
    };
  }

  private static LightColour other(LightColour seen) {
    return switch (seen) {
      case RED -> LightColour.GREEN;
      case GREEN -> LightColour.RED;
      default -> seen;
    };
  }

  private static Bearing otherLimit(SectorLookout lookout) {
    Sector white = lookout.white().bearings();
    return white.to().equals(lookout.bearing()) ? white.from() : white.to();
  }

  /** The value of the option for what is seen. */
  static String value(Optional<LightColour> seen) {
    return seen.map(LightColour::id).orElse(OBSCURED);
  }

  /** A whole bearing as the answer holds it. */
  static String degrees(Bearing bearing) {
    return Long.toString(Math.round(bearing.degrees()));
  }
}
