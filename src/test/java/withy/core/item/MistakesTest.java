package withy.core.item;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import withy.core.mark.MarkDescription;
import withy.core.mark.MarkGroup;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkingRules;
import withy.core.mark.Practice;

class MistakesTest {
  @Test
  void takesANorthCardinalMarkForThoseThatBeliefsMakeOfIt() {
    List<Mistake> mistakes = over(Practice.IALA_A, MarkKind.NORTH_CARDINAL);
    assertThat(mistakes)
        .extracting(each -> each.belief() + " " + each.value())
        .contains(
            "CONES_POINT_TO_DANGER south-cardinal",
            "DANGER_NAMED pass-south",
            "CLOCK_FACE_MISREAD west-cardinal");
  }

  @Test
  void leavesALateralMarkOnTheSameSideOnlyAgainstTheBuoyage() {
    for (Practice practice : Practice.values()) {
      assertThat(over(practice, MarkKind.STARBOARD_HAND))
          .filteredOn(each -> each.belief() == Misconception.DIRECTION_IGNORED)
          .extracting(Mistake::value)
          .containsExactly("leave-to-starboard");
    }
  }

  @Test
  void neverCallsARightAnswerAMistakeAndNamesEachBeliefOnce() {
    for (Practice practice : Practice.values()) {
      for (MarkDescription mark : practice.marks()) {
        List<Mistake> mistakes = Mistakes.over(practice, mark);
        assertThat(mistakes).as(mark.id()).extracting(Mistake::belief).doesNotHaveDuplicates();
        assertThat(mistakes)
            .as(mark.id())
            .filteredOn(each -> each.form() == Form.IDENTIFY)
            .noneMatch(each -> each.value().equals(mark.kind().id()));
        if (mark.group().compareTo(MarkGroup.NEW_DANGER) <= 0) {
          assertThat(mistakes).as(mark.id()).isNotEmpty();
        }
      }
    }
  }

  private static List<Mistake> over(Practice practice, MarkKind kind) {
    return Mistakes.over(practice, MarkingRules.mark(practice, kind));
  }
}
