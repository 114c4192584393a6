package withy.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Form;
import withy.core.measurement.SessionChange;
import withy.core.measurement.SessionChange.Trend;
import withy.core.measurement.Tally;
import withy.store.MemoryStore;
import withy.store.Store;

class LatestSessionTest {
  private static final String CARDINAL = "cardinal-identity";
  private static final String SAFE = "safe-water";

  private final Store store = MemoryStore.create();
  private final School school = School.over(store.ports());
  private final SchoolClass tuesday = school.schoolClass();
  private final LearnerCaller tern = school.learner(tuesday, "Tern");
  private final LearnerCaller skua = school.learner(tuesday, "Skua");
  private final LearnerCaller knot = school.learner(tuesday, "Knot");
  private final Assignment cardinal = drill(Concept.CARDINAL_IDENTITY);
  private final Assignment safe = drill(Concept.SAFE_WATER);

  @AfterEach
  void close() {
    store.close();
  }

  private Assignment drill(Concept concept) {
    Composition about = new Composition(List.of(concept), List.of(Form.IDENTIFY), null, 200);
    return school
        .cases
        .assignDrill()
        .assign(school.instructor(), tuesday.id(), "One concept", about, null);
  }

  private void answer(LearnerCaller learner, Assignment drill, boolean rightly, int times) {
    for (int i = 0; i < times; i++) {
      school.clock.pass(Duration.ofSeconds(20));
      IssuedItem item = school.next(learner, drill);
      school.answer(learner, item, rightly ? item.item().key() : School.wrong(item));
    }
  }

  private Map<String, Map<String, Tally>> latest() {
    return new LatestSession(store.ports().evidence()).of(tuesday.id()).tallies();
  }

  @Test
  void goesBackToWhereNobodyHadAnsweredForSomeHours() {
    answer(tern, cardinal, false, 3);
    school.clock.pass(LatestSession.REST.plusMinutes(1));
    answer(tern, cardinal, true, 2);
    school.clock.pass(LatestSession.REST.minusMinutes(1));
    answer(skua, safe, false, 1);
    answer(skua, safe, true, 1);
    assertThat(latest())
        .isEqualTo(
            Map.of(
                "Tern", Map.of(CARDINAL, new Tally(2, 0)),
                "Skua", Map.of(SAFE, new Tally(2, 1))));
  }

  @Test
  void findsNothingWhereNobodyAnswered() {
    assertThat(latest()).isEmpty();
  }

  @Test
  void readsSessionsThatAreLongerThanAPage() {
    answer(tern, cardinal, false, 2);
    school.clock.pass(Duration.ofDays(1));
    answer(tern, cardinal, true, 130);
    answer(skua, cardinal, true, 140);
    assertThat(latest())
        .isEqualTo(
            Map.of(
                "Tern", Map.of(CARDINAL, new Tally(130, 0)),
                "Skua", Map.of(CARDINAL, new Tally(140, 0))));
  }

  @Test
  void comparesThoseWhoAnsweredBothTimes() {
    for (LearnerCaller each : List.of(tern, skua)) {
      answer(each, cardinal, false, 8);
    }
    answer(tern, safe, true, 1);
    school.clock.pass(Duration.ofDays(2));
    for (LearnerCaller each : List.of(tern, skua, knot)) {
      answer(each, cardinal, true, 8);
    }
    answer(skua, safe, true, 1);
    List<SessionChange> changes =
        school.cases.reviewClass().changes(school.instructor(), tuesday.id());
    assertThat(changes)
        .as("nobody answered on safe water both times")
        .singleElement()
        .satisfies(
            change -> {
              assertThat(change.concept()).isEqualTo(CARDINAL);
              assertThat(change.learners()).isEqualTo(2);
              assertThat(change.before().mean()).isEqualTo(1);
              assertThat(change.now().mean()).isZero();
              assertThat(change.trend()).isEqualTo(Trend.BETTER);
            });
  }

  @Test
  void saysNothingOfAFirstSession() {
    answer(tern, cardinal, false, 3);
    assertThat(school.cases.reviewClass().changes(school.instructor(), tuesday.id())).isEmpty();
  }
}
