package withy.web.pages.instructor;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.item.Concept;
import withy.core.measurement.SequentialTest;
import withy.usecase.JudgeReadiness.Readiness;
import withy.usecase.JudgeReadiness.Verdict;

/** What readiness drills found, as the instructor reads it. */
record ReadinessWords(Phrases phrases) {
  /** Of the class. */
  String said(Readiness readiness) {
    if (readiness.interval() == null) {
      return phrases.text("assignment.nobody-judged");
    }
    return phrases.text(
        "assignment.ready",
        readiness.ready(),
        readiness.judged(),
        phrases.percent(readiness.interval().lower()),
        phrases.percent(readiness.interval().upper()));
  }

  /** Who has begun no readiness drill; null where nobody has begun any, or everybody has. */
  @Nullable String silent(Readiness readiness) {
    List<String> silent =
        readiness.learners().stream()
            .filter(each -> each.tries() == 0)
            .map(Verdict::nickname)
            .toList();
    return silent.isEmpty() || silent.size() == readiness.learners().size()
        ? null
        : phrases.text("assignment.none-begun", String.join(", ", silent));
  }

  /** Of one learner of the class whose answers these are. */
  Judged judged(Verdict verdict, AnswersBehind answers) {
    List<Linked> gate = verdict.gate().stream().map(each -> gate(verdict, each, answers)).toList();
    return new Judged(verdict.nickname(), found(verdict, answers), gate);
  }

  private @Nullable Linked found(Verdict verdict, AnswersBehind answers) {
    SequentialTest.Stand stand = verdict.stand();
    String drill = verdict.drill();
    if (stand == null || drill == null) {
      return null;
    }
    String found =
        phrases.text(
            "assignment.stand-" + stand.id(), verdict.right(), verdict.answered(), verdict.tries());
    String says = phrases.text("assignment.judged-says", found, verdict.nickname());
    return new Linked(found, says, answers.in(drill, verdict.learner()));
  }

  private Linked gate(Verdict verdict, Concept concept, AnswersBehind answers) {
    String name = phrases.name(concept);
    String says = phrases.text("assignment.gate-says", name, verdict.nickname());
    return new Linked(name, says, answers.of(verdict.learner(), concept.id()));
  }
}
