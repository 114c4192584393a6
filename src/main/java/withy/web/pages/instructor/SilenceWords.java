package withy.web.pages.instructor;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import withy.core.measurement.Silence;
import withy.core.measurement.Verdict;

/** What silence hides, in a few lines: which verdicts it could change, and which it cannot. */
record SilenceWords(Phrases phrases) {
  List<String> said(List<Silence> silences) {
    List<Silence> judged =
        silences.stream().filter(each -> each.verdict() != Verdict.TOO_LITTLE).toList();
    List<String> lines = new ArrayList<>();
    add(lines, "worse", judged.stream().filter(each -> isWorse(each)).toList());
    add(lines, "better", judged.stream().filter(each -> isBetter(each)).toList());
    boolean stands = judged.stream().noneMatch(Silence::mayChange);
    if (!judged.isEmpty() && stands) {
      lines.add(phrases.text("review.silence-stands"));
    }
    return lines;
  }

  private void add(List<String> lines, String key, List<Silence> which) {
    if (!which.isEmpty()) {
      String concepts =
          which.stream().map(each -> phrases.concept(each.concept())).collect(joining(", "));
      lines.add(phrases.text("review.silence-" + key, concepts));
    }
  }

  /** Taken for sound or nearly so by those who answered, and perhaps weak. */
  private static boolean isWorse(Silence each) {
    return each.verdict() != Verdict.WEAK && each.ifWrong() == Verdict.WEAK;
  }

  private static boolean isBetter(Silence each) {
    return each.verdict() == Verdict.WEAK && each.ifRight() != Verdict.WEAK;
  }
}
