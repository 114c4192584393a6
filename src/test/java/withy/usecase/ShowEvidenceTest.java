package withy.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static withy.usecase.Refusals.assertRefused;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import withy.core.item.Concept;
import withy.core.measurement.ConceptSums;
import withy.core.measurement.Confusion;
import withy.core.measurement.LearnerSums;
import withy.core.response.Response;
import withy.store.MemoryStore;
import withy.store.Store;
import withy.usecase.Behind.Which;

class ShowEvidenceTest {
  private final Store store = MemoryStore.create();
  private final School school = School.over(store.ports(), 17);
  private final InstructorCaller marlo = school.instructor();
  private final SchoolClass tuesday = school.schoolClass();
  private final List<LearnerCaller> learners =
      List.of(school.learner(tuesday, "Tern"), school.learner(tuesday, "Skua"));
  private final ShowEvidence evidence = school.cases.showEvidence();
  private final Random random = new Random(3);

  @AfterEach
  void close() {
    store.close();
  }

  private void answerMany(int count) {
    Assignment drill = school.assignment(tuesday, count);
    for (int i = 0; i < count * learners.size(); i++) {
      school.clock().pass(Duration.ofSeconds(random.nextInt(2)));
      LearnerCaller learner = learners.get(i % learners.size());
      IssuedItem next = school.next(learner, drill);
      if (random.nextInt(2) == 0 && !next.options().isEmpty()) {
        int chosen = random.nextInt(next.options().size());
        school.answer(learner, next, next.options().get(chosen).option().value());
      } else {
        school.answer(learner, next, next.item().key());
      }
    }
  }

  private long count(Behind which) {
    return evidence.page(marlo, which, null).all();
  }

  private Behind on(String learner, String concept, Which which) {
    return new Behind(tuesday.id(), learner, null, concept, null, null, null, null, which);
  }

  @Test
  void countsAsManyAsTheFiguresOfTheReviewSay() {
    answerMany(60);
    ReviewClass reviewClass = school.cases.reviewClass();
    List<LearnerSums> sums = store.ports().responses().sums(tuesday.id());
    int asked = 0;
    for (LearnerSums learner : sums) {
      String id = reviewClass.ids(marlo, tuesday.id()).get(learner.learner());
      assertThat(count(on(id, null, Which.ALL))).isEqualTo(learner.answers());
      assertThat(count(on(id, null, Which.WRONG))).isEqualTo(learner.answers() - learner.right());
      for (String concept : learner.concepts().keySet()) {
        ConceptSums own = learner.concepts().get(concept);
        assertThat(count(on(id, concept, Which.ALL))).isEqualTo(own.answers());
        assertThat(count(on(id, concept, Which.WRONG))).isEqualTo(own.errors());
        StoredResponse first =
            evidence.page(marlo, on(id, concept, Which.FIRST), null).rows().get(0);
        assertThat(first.response().correct()).isEqualTo(own.begunRight());
        asked++;
      }
    }
    assertThat(asked).isGreaterThan(20);
    reviewClass
        .review(marlo, tuesday.id())
        .concepts()
        .forEach(
            each -> {
              assertThat(count(on(null, each.concept(), Which.ALL)))
                  .isEqualTo(each.rate().answers());
              assertThat(count(on(null, each.concept(), Which.FIRST)))
                  .isEqualTo(each.rate().learners());
            });
  }

  /** The rows of a list are those that it counts, also between two moments. */
  @Test
  void listsWhatWasAnsweredBetweenTwoMoments() {
    answerMany(10);
    List<Response> all = newest(Behind.all(tuesday.id()));
    Instant since = all.get(15).answeredAt();
    Instant until = all.get(5).answeredAt();
    Behind between =
        new Behind(tuesday.id(), null, null, null, null, null, null, null, Which.ALL, since, until);

    List<Response> expected =
        all.stream()
            .filter(each -> !each.answeredAt().isBefore(since) && each.answeredAt().isBefore(until))
            .toList();

    assertThat(expected).isNotEmpty().hasSizeLessThan(all.size());
    assertThat(newest(between)).isEqualTo(expected);
    assertThat(count(between)).isEqualTo(expected.size());
  }

  private List<Response> newest(Behind which) {
    return evidence.page(marlo, which, null).rows().stream().map(StoredResponse::response).toList();
  }

  @Test
  void findsThoseWhoTakeOneMarkForAnother() {
    answerMany(80);
    List<Confusion> taken =
        school.cases.reviewClass().review(marlo, tuesday.id()).confusions().stream()
            .filter(each -> each.times() > 0)
            .toList();
    assertThat(taken).isNotEmpty();
    for (Confusion each : taken) {
      Behind pair =
          new Behind(
              tuesday.id(),
              null,
              null,
              null,
              "identify",
              each.shown(),
              each.answered(),
              null,
              Which.ALL);
      assertThat(count(pair)).isEqualTo(each.times());
    }
  }

  @Test
  void goesThroughAllOfThemOnceTheNewestFirst() {
    answerMany(45);
    List<Response> read = new ArrayList<>();
    Evidence.Place place = null;
    do {
      ShowEvidence.Page page = evidence.page(marlo, Behind.all(tuesday.id()), place);
      assertThat(page.all()).isEqualTo(90);
      page.rows().forEach(each -> read.add(each.response()));
      place = page.older();
    } while (place != null);

    List<Response> all = new ArrayList<>(school.cases.reviewClass().responses(marlo, tuesday.id()));
    all.sort(Comparator.comparing(Response::answeredAt).thenComparing(Response::item).reversed());
    assertThat(read).isEqualTo(all);
  }

  @Test
  void endsWhereTheLastPageIsFull() {
    answerMany(ShowEvidence.PAGE / 2);
    ShowEvidence.Page page = evidence.page(marlo, Behind.all(tuesday.id()), null);
    assertThat(page.rows()).hasSize(ShowEvidence.PAGE);
    assertThat(page.older()).isNull();
  }

  @Test
  void drawsAnItemAgainWithWhatWasChosen() {
    Assignment drill = school.assignment(tuesday, 4, Concept.LATERAL_SIDE);
    IssuedItem next = school.next(learners.get(0), drill);
    school.answer(learners.get(0), next, School.wrong(next));

    ShowEvidence.Asked asked = evidence.item(marlo, tuesday.id(), next.id());

    assertThat(asked.item()).isEqualTo(next.item());
    assertThat(asked.learner().nickname()).isEqualTo("Tern");
    assertThat(asked.response().response().option()).isEqualTo(School.wrong(next));
    assertThat(asked.alike()).isNull();
  }

  @Test
  void showsNothingOfAnothersClass() {
    Assignment drill = school.assignment(tuesday, 4, Concept.LATERAL_SIDE);
    IssuedItem next = school.next(learners.get(0), drill);
    InstructorCaller other = new InstructorCaller("0".repeat(32), "Other");
    SchoolClass friday = school.schoolClass();

    assertRefused(Reason.UNKNOWN_CLASS, () -> evidence.item(other, tuesday.id(), next.id()));
    assertRefused(Reason.UNKNOWN_CLASS, () -> evidence.page(other, Behind.all(tuesday.id()), null));
    assertRefused(Reason.UNKNOWN_ITEM, () -> evidence.item(marlo, friday.id(), next.id()));
    Behind stranger =
        new Behind(
            friday.id(), learners.get(0).id(), null, null, null, null, null, null, Which.ALL);
    assertRefused(Reason.UNKNOWN_LEARNER, () -> evidence.page(marlo, stranger, null));
    Behind elsewhere =
        new Behind(friday.id(), null, drill.id(), null, null, null, null, null, Which.ALL);
    assertRefused(Reason.UNKNOWN_ASSIGNMENT, () -> evidence.page(marlo, elsewhere, null));
  }
}
