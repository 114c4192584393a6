package withy.web.pages.learner;

import java.util.stream.Collectors;
import withy.core.measurement.SequentialTest;
import withy.usecase.JudgeReadiness.Verdict;
import withy.wording.Wording;

/** What a readiness drill found, as the learner reads it. */
record VerdictWords(Wording wording) {
  String said(Verdict verdict) {
    SequentialTest.Stand stand = verdict.stand();
    if (stand == null) {
      return wording.text("page.readiness.none");
    }
    String found =
        wording.text("page.readiness." + stand.id(), verdict.right(), verdict.answered());
    if (verdict.gate().isEmpty() || stand == SequentialTest.Stand.GO_ON) {
      return found;
    }
    String gate = verdict.gate().stream().map(wording::name).collect(Collectors.joining(", "));
    return found + " " + wording.text("page.readiness.gate", gate);
  }
}
