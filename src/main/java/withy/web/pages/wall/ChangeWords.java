package withy.web.pages.wall;

import java.util.ArrayList;
import java.util.List;
import withy.core.measurement.PairedAnswers;
import withy.usecase.AskAgain.Change;
import withy.wording.Wording;

/** Tells a class what has changed since it was last asked such a question, in counts. */
final class ChangeWords {
  /** Up to here a change is called more than chance would do; a tenth, as for confusions. */
  private static final double UNLIKELY = 0.10;

  private final Wording wording;

  ChangeWords(Wording wording) {
    this.wording = wording;
  }

  List<String> sentences(Change change) {
    PairedAnswers paired = change.paired();
    List<String> sentences = new ArrayList<>();
    if (paired.learners() > 0) {
      sentences.add(
          text("page.wall.since", paired.learners(), paired.rightBefore(), paired.rightNow()));
      sentences.add(text("page.wall.turned", paired.gained(), paired.lost()));
      sentences.add(text(weight(paired)));
    }
    if (change.others() > 0) {
      sentences.add(text("page.wall.first-time", change.others()));
    }
    return sentences;
  }

  private static String weight(PairedAnswers paired) {
    if (paired.chance() > UNLIKELY) {
      return "page.wall.may-be-chance";
    }
    return paired.gained() > paired.lost() ? "page.wall.better" : "page.wall.worse";
  }

  private String text(String key, Object... arguments) {
    return wording.text(key, arguments);
  }
}
