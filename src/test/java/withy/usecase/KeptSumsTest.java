package withy.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import withy.core.item.Concept;
import withy.core.measurement.LearnerSums;
import withy.core.measurement.Review;
import withy.core.response.Response;
import withy.store.MemoryStore;
import withy.store.Store;

/** What is kept in the transaction of each response is what all responses add up to. */
class KeptSumsTest {
  private final Store store = MemoryStore.create();
  private final School school = School.over(store.ports(), 8);
  private final SchoolClass tuesday = school.schoolClass();

  @AfterEach
  void close() {
    store.close();
  }

  @Test
  void equalsARecountAfterAnyAnswers() {
    Random random = new Random(4);
    for (String nickname : List.of("Avocet", "Brant", "Coot")) {
      LearnerCaller learner = school.learner(tuesday, nickname);
      Assignment drill = school.assignment(tuesday, 25, Concept.LATERAL_SIDE, Concept.SAFE_WATER);
      for (int i = 0; i < 25; i++) {
        school.clock().pass(Duration.ofSeconds(1 + random.nextInt(90)));
        answer(random, learner, school.next(learner, drill));
      }
    }
    assertRecounted();
    assertThat(sums()).extracting(LearnerSums::answers).containsOnly(25);
    assertThat(sums()).extracting(LearnerSums::rapid).anyMatch(each -> each > 0);
  }

  @Test
  void equalsARecountWhenAClockIsSetBack() {
    LearnerCaller tern = school.learner(tuesday, "Tern");
    Assignment drill = school.assignment(tuesday, 12, Concept.LATERAL_SIDE);
    Random random = new Random(5);
    for (int i = 0; i < 12; i++) {
      school.clock().pass(Duration.ofMinutes(i % 3 == 2 ? -7 : 3));
      answer(random, tern, school.next(tern, drill));
    }
    assertRecounted();
  }

  @Test
  void losesNoneOfManyAnswersAtOnce() throws Exception {
    LearnerCaller tern = school.learner(tuesday, "Tern");
    List<Assignment> drills =
        List.of(
            school.assignment(tuesday, 6, Concept.LATERAL_SIDE),
            school.assignment(tuesday, 6, Concept.SAFE_WATER),
            school.assignment(tuesday, 6, Concept.CARDINAL_IDENTITY),
            school.assignment(tuesday, 6, Concept.ISOLATED_DANGER));
    AtomicInteger next = new AtomicInteger();
    AtOnce.call(
        drills.size(),
        () -> {
          Assignment own = drills.get(next.getAndIncrement());
          for (int i = 0; i < 6; i++) {
            IssuedItem item = school.next(tern, own);
            school.answer(tern, item, item.item().key());
          }
          return own;
        });
    assertThat(sums().get(0).answers()).isEqualTo(24);
    assertRecounted();
  }

  @Test
  void isNothingForWhoHasNotAnswered() {
    LearnerCaller tern = school.learner(tuesday, "Tern");
    assertThat(store.ports().responses().sumsOf(tern.id())).contains(LearnerSums.none("Tern"));
    assertThat(sums()).isEmpty();
    assertThat(store.ports().responses().sumsOf("none")).isEmpty();
  }

  private void answer(Random random, LearnerCaller learner, IssuedItem item) {
    int what = random.nextInt(4);
    String word = item.options().isEmpty() || what > 1 ? item.item().key() : School.wrong(item);
    Given given = what == 0 ? null : School.given(item, word);
    long shown = random.nextInt(5) == 0 ? 400 : 6_000;
    school.cases().answerItem().answer(learner, UUID.randomUUID(), item.id(), given, shown);
  }

  private List<LearnerSums> sums() {
    return store.ports().responses().sums(tuesday.id());
  }

  private void assertRecounted() {
    List<Response> responses =
        school.cases().reviewClass().responses(school.instructor(), tuesday.id());
    assertThat(sums()).isEqualTo(LearnerSums.of(responses));
    assertThat(school.cases().reviewClass().review(school.instructor(), tuesday.id()))
        .isEqualTo(Review.of(responses));
  }
}
