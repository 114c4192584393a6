package withy.web.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import withy.core.drill.Grounds;
import withy.core.drill.NextConcept;
import withy.core.drill.NextConcept.Why;
import withy.wording.Wording;

class GroundsWordsTest {
  private final GroundsWords words = new GroundsWords(Wording.of(Locale.ENGLISH));

  @Test
  void saysWhyInOneSentenceWithTheNumbersOfTheLearner() {
    Grounds three = grounds(Why.UNSETTLED, 3, 2);
    assertThat(words.toLearner(three))
        .isEqualTo(
            "Asked because your 3 answers on “Sides of cardinal marks” disagreed: right 2, wrong 1.");
    assertThat(words.toInstructor(three, "Ada"))
        .isEqualTo("Ada’s 3 answers on it disagree: right 2, wrong 1.");
  }

  @Test
  void keepsOneAndManyApart() {
    assertThat(words.toLearner(grounds(Why.UNSETTLED, 1, 0))).contains("your only answer");
    assertThat(words.toLearner(grounds(Why.UNSETTLED, 2, 0))).contains("none of your 2 answers");
    assertThat(words.toInstructor(grounds(Why.NEW, 1, 1), "Ada")).contains("only answer");
    assertThat(words.toInstructor(grounds(Why.NEW, 2, 1), "Ada")).contains("2 answers");
  }

  @Test
  void hasASentenceForEveryReasonAndCount() {
    for (Grounds each : all()) {
      for (String said : List.of(words.toLearner(each), words.toInstructor(each, "Ada"))) {
        assertThat(said).endsWith(".").doesNotContain("{").doesNotContain("1 answers");
        assertThat(said.indexOf('.')).as(said).isEqualTo(said.length() - 1);
      }
    }
  }

  @Test
  void formatsNumbersAsTheLocaleDoes() {
    GroundsWords german = new GroundsWords(Wording.of(Locale.GERMAN));
    assertThat(german.toLearner(grounds(Why.KEPT_UP, 1_234, 1_233))).contains("1.233 of 1.234");
  }

  /** All that can be: of a new concept no answer counts, of any other at least one does. */
  private static List<Grounds> all() {
    List<Grounds> all = new ArrayList<>();
    for (Why why : Why.values()) {
      for (int answers = why == Why.NEW ? 0 : 1; answers < 4; answers++) {
        for (int right = 0; right <= answers; right++) {
          all.add(grounds(why, answers, right));
        }
      }
    }
    return all;
  }

  private static Grounds grounds(Why why, int answers, int right) {
    return Grounds.of(new NextConcept("cardinal-side", why), answers, right);
  }
}
