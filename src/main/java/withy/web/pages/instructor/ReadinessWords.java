package withy.web.pages.instructor;

import java.util.List;
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

  /** Of one learner. */
  String said(Verdict verdict) {
    SequentialTest.Stand stand = verdict.stand();
    if (stand == null) {
      return phrases.text("assignment.not-begun");
    }
    String found =
        phrases.text(
            "assignment.stand-" + stand.id(), verdict.right(), verdict.answered(), verdict.tries());
    if (verdict.gate().isEmpty()) {
      return found;
    }
    List<String> gate = verdict.gate().stream().map(phrases::name).toList();
    return found + " " + phrases.text("assignment.gate", String.join(", ", gate));
  }
}
