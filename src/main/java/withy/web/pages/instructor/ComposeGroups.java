package withy.web.pages.instructor;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.item.Composition;
import withy.core.measurement.SequentialTest;
import withy.core.response.DrillKind;
import withy.web.pages.Days;

/** Says in a line what is chosen in each part of a drill that is being composed. */
record ComposeGroups(Phrases phrases, Days days) {
  private static final String BETWEEN = " · ";

  /** How it is asked. */
  ComposeGroup forms(List<Choice> forms) {
    List<String> chosen = forms.stream().filter(Choice::chosen).map(Choice::text).toList();
    return chosen.isEmpty()
        ? new ComposeGroup(phrases.text("compose.all-forms"), false)
        : new ComposeGroup(String.join(BETWEEN, chosen), true);
  }

  /** Where the items lie, when, under which rules and how hard they are. */
  ComposeGroup where(Draft draft, List<Choice> times) {
    List<String> now = new ArrayList<>();
    now.add(draft.water() == null ? phrases.text("compose.anywhere") : draft.water().title());
    times.stream().filter(Choice::chosen).map(Choice::text).forEach(now::add);
    named(draft.practice()).ifPresent(now::add);
    now.add(named(draft.difficulty()).orElse(phrases.text("compose.as-hard-as-they-come")));
    boolean rules = draft.practice() != null || draft.difficulty() != null;
    boolean place = draft.water() != null || !draft.time().equals(Draft.BOTH);
    return new ComposeGroup(String.join(BETWEEN, now), rules || place);
  }

  private Optional<String> named(@Nullable Term term) {
    return Optional.ofNullable(term).map(phrases::name);
  }

  /** How it is done and from when on. */
  ComposeGroup how(Draft draft) {
    List<String> now = new ArrayList<>();
    now.add(phrases.text("compose.short-" + draft.kind().id()));
    if (draft.opens().isEmpty()) {
      now.add(phrases.text("compose.at-once"));
    }
    days.read(draft.opens()).map(this::opens).ifPresent(now::add);
    boolean usual = draft.kind() == DrillKind.ADAPTIVE && draft.opens().isEmpty();
    return new ComposeGroup(String.join(BETWEEN, now), !usual);
  }

  private String opens(Instant at) {
    return phrases.text("assignment.opens", days.said(at));
  }

  /** How much each learner gets; empty while the form does not say. */
  String count(Draft draft, int concepts) {
    return draft
        .composition()
        .map(
            each ->
                concepts == 0
                    ? phrases.text("compose.count-nothing")
                    : count(draft, each, concepts))
        .orElse("");
  }

  private String count(Draft draft, Composition composition, int concepts) {
    int length = composition.length();
    String items =
        switch (draft.kind()) {
          case ADAPTIVE, FIXED -> phrases.counted("compose.count", length, length);
          case READINESS -> phrases.text("compose.count-readiness", SequentialTest.USUAL.most());
          case REHEARSAL -> phrases.text("compose.count-rehearsal");
        };
    return items + BETWEEN + phrases.counted("compose.count-concepts", concepts, concepts);
  }
}
