package withy.web.pages.drillsets;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.hydrography.SurveyedWater;
import withy.core.item.Composition;
import withy.core.item.Difficulty;
import withy.core.mark.Practice;
import withy.core.scenario.TimeOfDay;
import withy.web.pages.Fact;
import withy.wording.Wording;

/** What a drill is drawn from, in words. */
final class DrillSetWords {
  private final Wording wording;

  DrillSetWords(Wording wording) {
    this.wording = wording;
  }

  /** In a line: how long, when, where, on what. */
  String line(Composition composition) {
    List<? extends Term> concepts = composition.concepts();
    return text(
        "page.drill-set.line",
        items(composition),
        time(composition.time()),
        concepts.size() > 2
            ? text("page.drill-set.concepts-count", concepts.size())
            : names(concepts, "page.drill-set.all-concepts"));
  }

  /** Fact by fact; a practice and a difficulty where it has them. */
  List<Fact> facts(Composition composition) {
    List<Fact> facts = new ArrayList<>();
    facts.addAll(usual(composition));
    Practice practice = composition.practice();
    if (practice != null) {
      facts.add(fact("page.compose.practice", wording.name(practice)));
    }
    Difficulty difficulty = composition.difficulty();
    if (difficulty != null) {
      facts.add(fact("page.compose.difficulty", wording.name(difficulty)));
    }
    return List.copyOf(facts);
  }

  private List<Fact> usual(Composition composition) {
    SurveyedWater water = composition.water();
    return List.of(
        fact("page.compose.concepts", names(composition.concepts(), "page.drill-set.all-concepts")),
        fact("page.compose.forms", names(composition.forms(), "page.drill-set.all-forms")),
        fact("page.compose.time", time(composition.time())),
        fact("page.compose.water", water == null ? text("page.compose.any-water") : water.title()),
        fact("page.drill-set.length", items(composition)));
  }

  private Fact fact(String key, String value) {
    return new Fact(text(key), value);
  }

  private String items(Composition composition) {
    int length = composition.length();
    return length == 1 ? text("page.drill-set.one-item") : text("page.drill-set.items", length);
  }

  private String time(@Nullable TimeOfDay time) {
    return time == null ? text("page.compose.both") : wording.name(time);
  }

  private String names(List<? extends Term> terms, String all) {
    return terms.isEmpty()
        ? text(all)
        : terms.stream().map(wording::name).collect(Collectors.joining(", "));
  }

  private String text(String key, Object... arguments) {
    return wording.text(key, arguments);
  }
}
