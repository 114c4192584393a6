package withy.web.pages.lights;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import withy.core.light.LightCharacter;
import withy.core.light.LightTimeline;
import withy.drawing.Lettering;
import withy.drawing.LightStrip;
import withy.drawing.LightView;
import withy.drawing.Svg;
import withy.web.pages.Fact;
import withy.web.pages.Link;
import withy.wording.LightWords;
import withy.wording.Wording;

/** Puts the lights of the bench into words and pictures. */
final class BenchViews {
  private final Wording wording;
  private final LightWords words;

  BenchViews(Wording wording) {
    this.wording = wording;
    this.words = new LightWords(wording);
  }

  /** The bench with the lights that could be read. */
  BenchView view(Asked asked, List<LightCharacter> lights) {
    return new BenchView(
        asked.first(),
        asked.second(),
        asked.pace().word(),
        asked.wall(),
        asked.pace().isStill(),
        lights(asked, lights),
        Arrays.stream(Pace.values()).map(each -> pace(asked, each)).toList(),
        Link.to(
            wording.text(asked.wall() ? "page.reference.leave-wall" : "page.reference.wall"),
            asked.onWall(!asked.wall()).address()),
        classes(asked, !lights.isEmpty()));
  }

  private List<BenchLight> lights(Asked asked, List<LightCharacter> lights) {
    List<LightTimeline> timelines = lights.stream().map(LightCharacter::timeline).toList();
    int span = LightStrip.span(timelines);
    List<BenchLight> shown = new ArrayList<>();
    for (LightCharacter each : lights) {
      LightTimeline paced = asked.pace().of(each.timeline());
      String name = each.shortNotation();
      Svg strip = LightStrip.alone(each.timeline(), span, Lettering.ENGLISH, true);
      shown.add(
          new BenchLight(
              name,
              words.name(each.lightClass()),
              words.definition(each.lightClass()),
              LightView.of(paced, lights.size()).named(wording.text("page.lights.view", name)),
              strip.named(wording.text("page.lights.strip", name, words.phases(each))),
              facts(each)));
    }
    return shown;
  }

  private List<Fact> facts(LightCharacter light) {
    List<Fact> facts = new ArrayList<>();
    facts.add(fact("page.lights.colours", words.colours(light)));
    facts.add(fact("page.lights.period", words.period(light)));
    facts.add(fact("page.lights.phases", words.phases(light)));
    facts.add(fact("page.lights.assumed", words.assumed(light)));
    facts.add(fact("page.lights.seen-from", words.seenFrom(light)));
    facts.removeIf(each -> each.text().isEmpty());
    return facts;
  }

  private Fact fact(String key, String text) {
    return new Fact(wording.text(key), text);
  }

  private Link pace(Asked asked, Pace pace) {
    String text = wording.text("light-pace." + pace.id());
    return new Link(text, asked.at(pace).address().toString(), pace == asked.pace());
  }

  private List<ClassRow> classes(Asked asked, boolean comparable) {
    List<ClassRow> rows = new ArrayList<>();
    for (LightCharacter each : Examples.ALL) {
      String character = each.shortNotation();
      Link show = Link.to(character, asked.show(character).address());
      String compare = wording.text("page.lights.compare-with", character);
      rows.add(
          new ClassRow(
              words.name(each.lightClass()),
              words.definition(each.lightClass()),
              LightStrip.of(each.timeline(), Lettering.ENGLISH, true),
              show,
              comparable ? Link.to(compare, asked.compareWith(character).address()) : null));
    }
    return rows;
  }
}
