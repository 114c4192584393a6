package withy.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import withy.core.measurement.LearnerSums;
import withy.core.response.Response;
import withy.usecase.Assignment;
import withy.usecase.IssuedItem;
import withy.usecase.LearnerCaller;
import withy.usecase.Responses;
import withy.usecase.School;
import withy.usecase.SchoolClass;
import withy.usecase.StoredResponse;

/** The sums that are kept are those of the responses that are kept, to the last digit. */
class SumsTableTest {
  private final String url =
      "jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1;LOCK_TIMEOUT=10000";
  private final Store store =
      Store.over(url, DataFolder.of(Path.of(System.getProperty("java.io.tmpdir"))));
  private final School school = School.over(store.ports(), 11);
  private final Responses responses = store.ports().responses();
  private final SchoolClass tuesday = school.schoolClass();

  @AfterEach
  void close() {
    store.close();
  }

  /** The clock of a laptop may go backwards, and stand: then the order of storing is not that. */
  @Test
  void areARecountInWhateverOrderAnswersCome() {
    Random random = new Random(5);
    List<LearnerCaller> learners = learners("Tern", "Skua", "Avocet");
    Assignment drill = school.assignment(tuesday, 60);
    for (int i = 0; i < 90; i++) {
      answer(random, learners.get(random.nextInt(3)), drill);
      assertAreARecount();
    }
    assertThat(responses.sums(tuesday.id())).hasSize(3);
  }

  @Test
  void loseNothingWhenOneLearnerAnswersOnManyPhonesAtOnce() throws Exception {
    LearnerCaller tern = school.learner(tuesday, "Tern");
    ExecutorService phones = Executors.newFixedThreadPool(6);
    List<Future<?>> all = new ArrayList<>();
    for (int phone = 0; phone < 6; phone++) {
      Assignment drill = school.assignment(tuesday, 10);
      all.add(phones.submit(() -> school.answerRight(tern, drill, 10)));
    }
    for (Future<?> each : all) {
      each.get();
    }
    phones.shutdown();
    assertThat(responses.sumsOf(tern.id()).orElseThrow().answers()).isEqualTo(60);
    assertAreARecount();
  }

  @Test
  void areCountedAnewWhereAnotherProgramsFormatStands() {
    LearnerCaller tern = school.learner(tuesday, "Tern");
    Assignment drill = school.assignment(tuesday, 8);
    school.answerRight(tern, drill, 4);
    LearnerSums before = responses.sumsOf(tern.id()).orElseThrow();
    forget();
    assertThat(responses.sumsOf(tern.id())).contains(before);
    forget();
    school.answerRight(tern, drill, 1);
    assertAreARecount();
    forget();
    assertAreARecount();
  }

  @Test
  void tellHowMuchAClassAnswered() {
    List<LearnerCaller> learners = learners("Tern", "Skua");
    assertThat(responses.overview(tuesday.instructor()))
        .containsOnlyKeys(tuesday.id())
        .containsEntry(tuesday.id(), new Responses.Overview(2, 0, null));
    Assignment drill = school.assignment(tuesday, 8);
    school.answerRight(learners.get(0), drill, 2);
    school.clock().pass(Duration.ofMinutes(1));
    school.answerRight(learners.get(1), drill, 3);
    Instant now = school.clock().instant().truncatedTo(ChronoUnit.MILLIS);
    assertThat(responses.overview(tuesday.instructor()))
        .containsEntry(tuesday.id(), new Responses.Overview(2, 5, now));
    assertThat(responses.overview("nobody")).isEmpty();
    assertThat(responses.latestSums(1)).extracting(LearnerSums::learner).containsExactly("Skua");
  }

  private List<LearnerCaller> learners(String... names) {
    return List.of(names).stream().map(each -> school.learner(tuesday, each)).toList();
  }

  private void answer(Random random, LearnerCaller learner, Assignment drill) {
    school.clock().pass(Duration.ofSeconds(random.nextInt(7) - 2));
    IssuedItem next = school.next(learner, drill);
    if (random.nextInt(3) == 0 && !next.options().isEmpty()) {
      int chosen = random.nextInt(next.options().size());
      school.answer(learner, next, next.options().get(chosen).option().value());
    } else {
      school.answer(learner, next, next.item().key());
    }
  }

  private void assertAreARecount() {
    List<Response> all =
        responses.ofClass(tuesday.id()).stream().map(StoredResponse::response).toList();
    assertThat(responses.sums(tuesday.id()))
        .containsExactlyInAnyOrderElementsOf(LearnerSums.of(all));
  }

  private void forget() {
    try (Handle handle = Jdbi.open(() -> Database.connect(url))) {
      handle.execute("UPDATE learner_sums SET format = 0, sums = ''");
    }
  }
}
