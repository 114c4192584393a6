package withy.web.pages.instructor;

import java.util.ArrayList;
import java.util.List;
import withy.core.measurement.Silence;
import withy.core.measurement.Verdict;

/** What silence hides, in a few lines: which verdicts it could change, and which it cannot. */
record SilenceWords(Phrases phrases, AnswersBehind answers) {
  List<Saying> said(List<Silence> silences) {
    List<Silence> judged =
        silences.stream().filter(each -> each.verdict() != Verdict.TOO_LITTLE).toList();
    List<Saying> lines = new ArrayList<>();
    add(lines, "worse", judged.stream().filter(each -> isWorse(each)).toList());
    add(lines, "better", judged.stream().filter(each -> isBetter(each)).toList());
    boolean stands = judged.stream().noneMatch(Silence::mayChange);
    if (!judged.isEmpty() && stands) {
      lines.add(new Saying(phrases.text("review.silence-stands"), List.of()));
    }
    return lines;
  }

  private void add(List<Saying> lines, String key, List<Silence> which) {
    if (!which.isEmpty()) {
      lines.add(
          new Saying(
              phrases.text("review.silence-" + key), which.stream().map(this::heard).toList()));
    }
  }

  private Linked heard(Silence each) {
    String name = phrases.concept(each.concept());
    String says = phrases.text("review.answers-about", name);
    return new Linked(name, says, answers.on(each.concept()));
  }

  /** Taken for sound or nearly so by those who answered, and perhaps weak. */
  private static boolean isWorse(Silence each) {
    return each.verdict() != Verdict.WEAK && each.ifWrong() == Verdict.WEAK;
  }

  private static boolean isBetter(Silence each) {
    return each.verdict() == Verdict.WEAK && each.ifRight() != Verdict.WEAK;
  }
}
