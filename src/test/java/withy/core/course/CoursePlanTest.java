package withy.core.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import withy.core.item.Concept;

class CoursePlanTest {
  private static final LocalDate TODAY = LocalDate.of(2031, 2, 3);
  private static final List<Concept> ALL = List.of(Concept.values());

  private static List<Session> plan(int days, int evenings) {
    return CoursePlan.propose(TODAY, TODAY.plusDays(days), evenings, ALL, List.of());
  }

  /** Cepeda et al. 2008, as reference/measurement/evidence.csv gives it. */
  @Test
  void keepsTheGapsOfTheEvidence() {
    assertThat(Spacing.least(7)).isCloseTo(0.20, within(1e-12));
    assertThat(Spacing.most(7)).isCloseTo(0.40, within(1e-12));
    assertThat(Spacing.least(365)).isCloseTo(0.05, within(1e-12));
    assertThat(Spacing.most(365)).isCloseTo(0.10, within(1e-12));
    assertThat(Spacing.gap(7)).isEqualTo(2);
    assertThat(Spacing.gap(365)).isEqualTo(26);
  }

  @Test
  void meetsEveryConceptTwiceFromTwoDaysToAYear() {
    for (int days = 2; days <= CoursePlan.LONGEST; days++) {
      for (int evenings = 1; evenings <= 8; evenings++) {
        List<Session> plan = plan(days, evenings);
        for (Concept each : ALL) {
          assertThat(plan.stream().filter(s -> s.concepts().contains(each)))
              .as("%s in %d days, %d evenings", each, days, evenings)
              .hasSizeGreaterThanOrEqualTo(2);
        }
      }
    }
  }

  @Test
  void keepsEveryReturnInsideTheBandOfTheDaysLeftInWholeDays() {
    for (int days = 3; days <= CoursePlan.LONGEST; days++) {
      List<Session> plan = plan(days, 6);
      for (Concept each : ALL) {
        List<Session> meetings = plan.stream().filter(s -> s.concepts().contains(each)).toList();
        int left = meetings.get(0).daysLeft();
        int gap = meetings.get(1).gap();
        if (meetings.get(1).purpose() == Purpose.REHEARSAL) {
          continue; // the last look lies close to the practical, whatever the gap
        }
        assertThat((double) gap)
            .as("%s, %d days", each, days)
            .isBetween(
                StrictMath.floor(left * Spacing.least(left)),
                StrictMath.ceil(left * Spacing.most(left)));
      }
    }
  }

  @Test
  void drillsNothingOnTheDayOfThePracticalOrLater() {
    for (int days = 1; days <= CoursePlan.LONGEST; days++) {
      List<Session> plan = plan(days, 4);
      LocalDate practical = TODAY.plusDays(days);
      assertThat(plan).allMatch(each -> each.on().isBefore(practical));
      assertThat(plan.get(0).on()).isEqualTo(TODAY);
      assertThat(plan.get(plan.size() - 1).on()).isEqualTo(practical.minusDays(1));
      assertThat(plan).isSortedAccordingTo((one, other) -> one.on().compareTo(other.on()));
    }
  }

  @Test
  void meetsWhatIsTakenForEachOtherOnOneDay() {
    for (int days : new int[] {1, 7, 30, 90, 365}) {
      for (Session each : plan(days, 6)) {
        for (Concept first : each.first()) {
          assertThat(each.first()).containsAll(Theme.of(first).concepts());
        }
      }
    }
  }

  @Test
  void putsEveryConceptInOneTheme() {
    List<Concept> placed = new ArrayList<>();
    Arrays.stream(Theme.values()).forEach(each -> placed.addAll(each.concepts()));
    assertThat(placed).containsExactlyInAnyOrder(Concept.values());
  }

  @Test
  void beginsWithWhatTheClassNeeds() {
    List<Session> plan =
        CoursePlan.propose(
            TODAY, TODAY.plusDays(30), 4, ALL, List.of(Concept.LIGHT_RANGE, Concept.CLEARANCE));
    assertThat(plan.get(0).first()).contains(Concept.LIGHT_RANGE);
    assertThat(plan.get(0).first()).doesNotContain(Concept.LATERAL_SIDE);
  }

  @Test
  void meetsOnNoMoreEveningsThanThereAre() {
    assertThat(plan(30, 3).stream().filter(Session::together)).hasSize(3);
  }

  @Test
  void endsWithReadinessAndRehearsal() {
    List<Session> plan = plan(30, 5);
    assertThat(plan.get(plan.size() - 2).purpose()).isEqualTo(Purpose.READINESS);
    assertThat(plan.get(plan.size() - 1).purpose()).isEqualTo(Purpose.REHEARSAL);
  }

  @Test
  void makesDoWithOneDay() {
    assertThat(plan(1, 1)).hasSize(2).allMatch(each -> each.on().equals(TODAY));
  }

  @Test
  void refusesWhatIsNoCourse() {
    assertThatIllegalArgumentException().isThrownBy(() -> plan(0, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> plan(367, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> plan(10, 0));
  }
}
