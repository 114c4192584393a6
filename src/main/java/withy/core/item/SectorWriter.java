package withy.core.item;

import java.util.ArrayList;
import java.util.List;
import withy.core.Chance;
import withy.core.geometry.Bearing;
import withy.core.geometry.Sector;
import withy.core.hydrography.FairwayLight;
import withy.core.light.LightCharacter;
import withy.core.light.LightColour;
import withy.core.light.LightSector;
import withy.core.light.SectoredLight;
import withy.core.mark.Practice;
import withy.core.mark.Travel;
import withy.core.scenario.Scenario;
import withy.core.scenario.SectorLookout;
import withy.core.scenario.SectorQuestion;
import withy.core.scenario.Situation;
import withy.core.scenario.TimeOfDay;
import withy.core.scenario.View;

/** Asks what is seen of a light with sectors, or where its white sector ends. */
final class SectorWriter implements ItemWriter {
  /** Degrees that a bearing keeps clear of a limit, where the colours are hard to tell. */
  private static final double CLEAR = 3;

  /** How far off an answer in degrees may be. */
  static final double WHOLE_DEGREE = 1;

  private static final List<LightCharacter> LIGHTS =
      List.of("Oc WRG 6s", "Iso WRG 4s", "Fl WRG 5s", "Oc(2) WRG 8s", "Fl(3) WRG 15s").stream()
          .map(LightCharacter::parse)
          .toList();

  @Override
  public Form form() {
    return Form.LIGHT;
  }

  @Override
  public boolean measures(Concept concept, Practice practice, TimeOfDay time) {
    return concept == Concept.LIGHT_RANGE && time == TimeOfDay.NIGHT;
  }

  @Override
  public Draft write(Task task) {
    SectorQuestion question = task.chance().pick(List.of(SectorQuestion.values()));
    Scenario scenario;
    do {
      scenario =
          switch (question) {
            case BEARING, BOW -> coast(task, question);
            case FAIRWAY, LIMIT -> fairway(task, question);
          };
    } while (Distractors.of(task, Form.LIGHT, scenario, key(scenario)).count() == 0);
    return new Draft(
        Form.LIGHT,
        concepts(scenario),
        scenario,
        SectorWords.prompt(scenario),
        question == SectorQuestion.LIMIT ? number(task, scenario) : choice(task, scenario),
        SectorWords.explanation(scenario));
  }

  private static Answer choice(Task task, Scenario scenario) {
    String key = key(scenario);
    return Choice.of(
        new Option(key, text(key), null, null),
        Distractors.of(task, Form.LIGHT, scenario, key).options(SectorWriter::text));
  }

  private static Answer number(Task task, Scenario scenario) {
    String key = key(scenario);
    return Quantity.of(
        Unit.DEGREES,
        Double.parseDouble(key),
        WHOLE_DEGREE,
        Distractors.of(task, Form.LIGHT, scenario, key).numbers());
  }

  private static List<Concept> concepts(Scenario scenario) {
    return scenario.situation().travel() == Travel.NONE
        ? List.of(Concept.LIGHT_RANGE)
        : List.of(Concept.LIGHT_RANGE, Concept.REGION);
  }

  private static String key(Scenario scenario) {
    SectorLookout lookout = SectorWords.lookout(scenario);
    return lookout.question() == SectorQuestion.LIMIT
        ? SectorBeliefs.degrees(lookout.bearing())
        : SectorBeliefs.value(lookout.seen());
  }

  private static Message text(String value) {
    return Message.of("option.seen." + value);
  }

  /** A light on the coast with three broad sectors. */
  private static Scenario coast(Task task, SectorQuestion question) {
    Chance chance = task.chance();
    SectoredLight sectors = broad(chance);
    Bearing bearing;
    do {
      bearing = Drawn.bearing(chance);
    } while (nearLimit(sectors, bearing));
    int off = chance.between(10, 70);
    Bearing heading = bearing.plus(chance.oneIn(2) ? off : -off);
    Situation situation = Situation.steering(heading, task.time(), View.LIGHT);
    return scenario(task, situation, sectors, bearing, question);
  }

  private static SectoredLight broad(Chance chance) {
    List<LightColour> colours =
        chance.shuffled(List.of(LightColour.WHITE, LightColour.RED, LightColour.GREEN));
    List<LightSector> sectors = new ArrayList<>(colours.size());
    Bearing limit = Drawn.bearing(chance);
    for (LightColour each : colours) {
      Bearing next = limit.plus(chance.between(35, 105));
      sectors.add(new LightSector(new Sector(limit, next), each));
      limit = next;
    }
    return new SectoredLight(sectors);
  }

  private static boolean nearLimit(SectoredLight sectors, Bearing bearing) {
    for (LightSector each : sectors.sectors()) {
      Sector sector = each.bearings();
      if (sector.from().angleTo(bearing) < CLEAR || sector.to().angleTo(bearing) < CLEAR) {
        return true;
      }
    }
    return false;
  }

  /** A light that leads in; the boat stands beside its white sector, or comes to its limit. */
  private static Scenario fairway(Task task, SectorQuestion question) {
    Chance chance = task.chance();
    Sector white = narrow(chance);
    int side = chance.between(12, 25);
    boolean toPort = chance.oneIn(2);
    int beyond = question == SectorQuestion.LIMIT ? 0 : chance.between((int) CLEAR, side - 2);
    Bearing bearing = toPort ? white.to().plus(beyond) : white.from().plus(-beyond);
    Bearing inward = new Bearing(Math.floor(white.middle().degrees()));
    Situation situation =
        new Situation(inward, Travel.WITH, inward, task.time(), View.LIGHT, null, null, null);
    SectoredLight sectors = FairwayLight.of(task.practice().region(), white, side);
    return scenario(task, situation, sectors, bearing, question);
  }

  /** Away from north and south, so that neither limit nor its reverse is near 000. */
  private static Sector narrow(Chance chance) {
    int width = chance.between(6, 14);
    int from = chance.between(2, 178 - width) + (chance.oneIn(2) ? 180 : 0);
    return Sector.of(from, from + width);
  }

  private static Scenario scenario(
      Task task,
      Situation situation,
      SectoredLight sectors,
      Bearing bearing,
      SectorQuestion question) {
    LightCharacter light = task.chance().pick(LIGHTS);
    return new Scenario(
        task.practice(),
        situation,
        List.of(),
        new SectorLookout(light, sectors, bearing, question));
  }
}
