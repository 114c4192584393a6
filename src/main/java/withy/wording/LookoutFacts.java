package withy.wording;

import java.util.ArrayList;
import java.util.List;
import withy.core.light.Elevation;
import withy.core.light.LightColour;
import withy.core.light.LightSector;
import withy.core.scenario.Lookout;
import withy.core.scenario.RangeLookout;
import withy.core.scenario.Scenario;
import withy.core.scenario.SectorLookout;
import withy.core.scenario.SectorQuestion;

/** What a navigator finds in chart, light list and log about a light ashore. */
final class LookoutFacts {
  private final Wording wording;
  private final List<String> facts = new ArrayList<>();

  LookoutFacts(Wording wording) {
    this.wording = wording;
  }

  List<String> of(Scenario scenario, Lookout lookout) {
    if (lookout instanceof SectorLookout sectors) {
      sectors(scenario, sectors);
    }
    if (lookout instanceof RangeLookout range) {
      range(range);
    }
    return List.copyOf(facts);
  }

  private void range(RangeLookout lookout) {
    add("fact.light", lookout.light().notation());
    Elevation eye = lookout.eye();
    add("fact.eye." + unit(eye), eye.value());
    if (lookout.visibility() != null) {
      add("fact.visibility", lookout.visibility());
      lookout
          .luminousTable()
          .forEach((nominal, luminous) -> add("fact.luminous", nominal, luminous));
    }
    add("fact.horizon." + unit(eye));
    if (lookout.visibility() != null) {
      add("fact.diagram");
    }
  }

  private static String unit(Elevation height) {
    return height.feet() ? "ft" : "m";
  }

  /** Where the rule of the region is asked for, the colours beside the white sector stay unsaid. */
  private void sectors(Scenario scenario, SectorLookout lookout) {
    SectorQuestion question = lookout.question();
    boolean byRegion = question == SectorQuestion.FAIRWAY || question == SectorQuestion.LIMIT;
    if (byRegion) {
      add("fact.region", scenario.practice().region());
    }
    add("fact.light", lookout.light().notation());
    for (LightSector each : lookout.sectors().sectors()) {
      boolean white = each.colour() == LightColour.WHITE;
      if (!byRegion || (white && question == SectorQuestion.FAIRWAY)) {
        add(
            "fact.sector",
            each.colour().abbreviation(),
            each.bearings().from(),
            each.bearings().to());
      }
    }
  }

  private void add(String key, Object... arguments) {
    facts.add(wording.text(key, arguments));
  }
}
