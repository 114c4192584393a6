package withy.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static withy.usecase.Refusals.assertRefused;

import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import withy.catalogue.DemoClassReader;
import withy.catalogue.WaterReader;
import withy.core.item.Concept;
import withy.core.item.Misconception;
import withy.core.measurement.ConceptError;
import withy.core.measurement.Review;
import withy.core.measurement.SequentialTest;
import withy.core.measurement.SessionChange;
import withy.core.measurement.Verdict;
import withy.core.response.Response;
import withy.store.MemoryStore;
import withy.store.Store;

class DemoClassTest {
  private static final Store STORE = MemoryStore.create();
  private static final School SCHOOL = School.over(STORE.ports(new WaterReader()), 7);
  private static final DemoClass DEMO =
      new DemoClass(
          STORE.ports(new WaterReader()),
          School.CHEAP,
          SCHOOL.clock,
          SCHOOL.secrets,
          DemoClassReader.read());

  private static final SchoolClass MADE = DEMO.fill();

  @AfterAll
  static void close() {
    STORE.close();
  }

  @Test
  void showsTheWeakSpotThatWasPlanted() {
    InstructorCaller marlo = SCHOOL.instructor();

    Review review = SCHOOL.cases.reviewClass().review(marlo, MADE.id());

    ConceptError weakest = review.concepts().get(0);
    assertThat(weakest.concept()).isEqualTo("cardinal-side");
    assertThat(weakest.verdict()).isEqualTo(Verdict.WEAK);
    assertThat(weakest.beliefs().get(0).misconception()).isEqualTo("danger-named");
    assertThat(weakest.beliefs().get(0).learners()).isPositive();
    assertThat(review.concepts())
        .filteredOn(each -> each.verdict() == Verdict.WEAK)
        .extracting(ConceptError::concept)
        .containsExactly("cardinal-side");
    assertThat(SCHOOL.cases.reviewClass().silent(marlo, MADE.id())).containsExactly("Wren");
  }

  @Test
  void isSpreadOverPastDaysAndHasDrillsDoneAndDrillsOpen() {
    InstructorCaller marlo = SCHOOL.instructor();
    Instant now = SCHOOL.clock.instant();

    List<Response> responses = SCHOOL.cases.reviewClass().responses(marlo, MADE.id());
    List<AssignDrill.Progress> drills = SCHOOL.cases.assignDrill().progress(marlo, MADE.id());

    assertThat(responses).allMatch(each -> each.answeredAt().isBefore(now));
    Instant first = responses.get(0).answeredAt();
    Instant last = responses.get(responses.size() - 1).answeredAt();
    assertThat(Duration.between(first, last)).isGreaterThan(Duration.ofDays(4));
    assertThat(drills).hasSize(4);
    assertThat(drills.get(0).assignment().due()).isAfter(now);
    assertThat(drills.get(1).assignment().due()).isAfter(now);
    assertThat(drills.get(2).assignment().due()).isBefore(now);
    assertThat(drills.get(3).assignment().due()).isBefore(now);
    assertThat(drills.get(1).learners()).extracting(each -> each.answered()).contains(0, 5, 12);
  }

  @Test
  void showsWhatChangedSinceTheLastSession() {
    List<SessionChange> changes =
        SCHOOL.cases.reviewClass().changes(SCHOOL.instructor(), MADE.id());

    assertThat(changes)
        .extracting(SessionChange::concept)
        .contains("cardinal-identity", "cardinal-side", "lateral-side", "safe-water");
    assertThat(changes)
        .filteredOn(each -> each.trend() == SessionChange.Trend.BETTER)
        .extracting(SessionChange::concept)
        .containsExactly("cardinal-side");
  }

  @Test
  void showsWhoIsReadyWhoIsNotAndWhoHasNotSaid() {
    JudgeReadiness.Readiness readiness =
        SCHOOL.cases.judgeReadiness().of(SCHOOL.instructor(), MADE.id());

    Map<String, JudgeReadiness.Verdict> verdicts = new LinkedHashMap<>();
    readiness.learners().forEach(each -> verdicts.put(each.nickname(), each));
    assertThat(verdicts.get("Curlew").isReady()).isTrue();
    assertThat(verdicts.get("Dunlin").stand()).isEqualTo(SequentialTest.Stand.NOT_READY);
    assertThat(verdicts.get("Fulmar").stand()).isEqualTo(SequentialTest.Stand.GO_ON);
    assertThat(verdicts.get("Godwit").stand()).isEqualTo(SequentialTest.Stand.READY);
    assertThat(verdicts.get("Godwit").gate()).containsExactly(Concept.CARDINAL_SIDE);
    assertThat(verdicts.get("Godwit").isReady()).isFalse();
    assertThat(readiness.learners())
        .filteredOn(each -> each.stand() == null)
        .extracting(JudgeReadiness.Verdict::nickname)
        .containsExactly("Knot", "Skua", "Wren");
  }

  @Test
  void mendsOnlyWhatWasBelieved() {
    SortedMap<Misconception, Integer> mended = new TreeMap<>(Map.of(Misconception.DANGER_NAMED, 1));

    assertThat(member(List.of(Misconception.DANGER_NAMED), mended).beliefsIn(0))
        .containsExactly(Misconception.DANGER_NAMED);
    assertThat(member(List.of(Misconception.DANGER_NAMED), mended).beliefsIn(1)).isEmpty();
    assertThatIllegalArgumentException().isThrownBy(() -> member(List.of(), mended));
  }

  private static DemoPlan.Member member(
      List<Misconception> beliefs, SortedMap<Misconception, Integer> mended) {
    return new DemoPlan.Member("Avocet", beliefs, mended, 0.05, 10, List.of(4, 4));
  }

  @Test
  void goesOnlyWhereThereIsNothing() {
    assertRefused(Reason.NOT_EMPTY, DEMO::fill);
  }

  @Test
  void isNobodysUntilTheServerIsSetUp() {
    assertThat(MADE.instructor()).isNull();
    assertThat(SCHOOL.cases.openClass().classes(SCHOOL.instructor())).hasSize(1);
  }
}
