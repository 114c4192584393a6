package withy.core.item;

import withy.core.geometry.Bearing;
import withy.core.geometry.Sector;
import withy.core.light.LightColour;
import withy.core.mark.Colour;
import withy.core.scenario.Scenario;
import withy.core.scenario.SectorLookout;

/** What is asked and explained about a light with sectors. */
final class SectorWords {
  private SectorWords() {}

  static SectorLookout lookout(Scenario scenario) {
    if (scenario.lookout() instanceof SectorLookout lookout) {
      return lookout;
    }
    throw new IllegalStateException("the scenario has no light with sectors");
  }

  static Message prompt(Scenario scenario) {
    SectorLookout lookout = lookout(scenario);
    Bearing bearing = lookout.bearing();
    return switch (lookout.question()) {
      case BEARING -> Message.of("prompt.sector.bearing", bearing);
      case BOW ->
          Message.of(
              "prompt.sector.bow." + hand(scenario), scenario.situation().heading(), off(scenario));
      case FAIRWAY -> {
        Sector white = lookout.white().bearings();
        yield Message.of("prompt.sector.fairway", white.from(), white.to(), bearing);
      }
      case LIMIT -> {
        Sector white = lookout.white().bearings();
        yield Message.of(
            "prompt.sector.limit",
            white.from().reciprocal(),
            white.to().reciprocal(),
            colour(lookout.beyond()),
            SectorWriter.WHOLE_DEGREE);
      }
    };
  }

  static Message explanation(Scenario scenario) {
    SectorLookout lookout = lookout(scenario);
    Bearing bearing = lookout.bearing();
    return switch (lookout.question()) {
      case BEARING -> Message.of("rule.sector.bearing" + obscured(lookout), bearing, seen(lookout));
      case BOW ->
          Message.of(
              "rule.sector.bow." + hand(scenario) + obscured(lookout),
              scenario.situation().heading(),
              off(scenario),
              bearing,
              seen(lookout));
      case FAIRWAY ->
          Message.of(
              "rule.sector.fairway." + side(lookout),
              scenario.practice().region(),
              seen(lookout),
              bearing);
      case LIMIT ->
          Message.of(
              "rule.sector.limit." + side(lookout),
              scenario.practice().region(),
              colour(lookout.beyond()),
              bearing.reciprocal(),
              bearing);
    };
  }

  private static String obscured(SectorLookout lookout) {
    return lookout.seen().isPresent() ? "" : ".obscured";
  }

  /** What is seen, as a word in a sentence; white where the sentence does not name it. */
  private static Colour seen(SectorLookout lookout) {
    return lookout.seen().map(SectorWords::colour).orElse(Colour.WHITE);
  }

  private static Colour colour(LightColour light) {
    return Colour.valueOf(light.name());
  }

  private static String hand(Scenario scenario) {
    return relative(scenario) < 0 ? "port" : "starboard";
  }

  private static long off(Scenario scenario) {
    return Math.round(Math.abs(relative(scenario)));
  }

  private static double relative(Scenario scenario) {
    return lookout(scenario).bearing().relativeTo(scenario.situation().heading());
  }

  /** On which side of the fairway the boat stands, or comes to. */
  private static String side(SectorLookout lookout) {
    Sector white = lookout.white().bearings();
    return white.middle().relativeTo(lookout.bearing()) < 0 ? "port" : "starboard";
  }
}
