package withy.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static withy.usecase.Refusals.assertRefused;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Form;
import withy.core.item.ItemGenerator;
import withy.core.measurement.Distractor;
import withy.core.measurement.KindAnalysis;
import withy.core.response.DrillKind;
import withy.store.MemoryStore;
import withy.store.Store;

class ShowKindTest {
  private final Store store = MemoryStore.create();
  private final School school = School.over(store.ports(), 23);
  private final InstructorCaller marlo = school.instructor();
  private final SchoolClass tuesday = school.schoolClass();
  private final Assignment sides = drill(Concept.LATERAL_SIDE, Form.SIDE);
  private final Assignment others = drill(Concept.CARDINAL_SIDE, Form.CARDINAL_PASS);
  private final ShowKind kinds = school.cases.showKind();

  @AfterEach
  void close() {
    store.close();
  }

  private Assignment drill(Concept concept, Form form) {
    Composition only = new Composition(List.of(concept), List.of(form), null, 2);
    return school.cases.assignDrill().assign(marlo, tuesday.id(), form.id(), only, null);
  }

  /** Of every two learners one answers all rightly, the other all wrongly. */
  private void answer(int from, int to) {
    for (int i = from; i < to; i++) {
      LearnerCaller learner = school.learner(tuesday, "Learner " + i);
      for (Assignment each : List.of(sides, others)) {
        IssuedItem next = school.next(learner, each);
        school.clock().pass(Duration.ofSeconds(1));
        school.answer(learner, next, i % 2 == 0 ? next.item().key() : School.wrong(next));
      }
    }
  }

  private ShowKind.Found found() {
    return kinds.of(marlo, tuesday.id(), Form.SIDE, Concept.LATERAL_SIDE);
  }

  @Test
  void judgesTheQuestionFromThirtyLearnersOn() {
    answer(0, 29);
    KindAnalysis few = found().analysis();
    assertThat(few.learners()).isEqualTo(29);
    assertThat(few.answers()).isEqualTo(29);
    assertThat(few.facility()).isEqualTo(15 / 29.0);
    assertThat(few.isJudged()).isFalse();
    assertThat(few.discrimination()).isNull();
    assertThat(few.distractors()).extracting(Distractor::work).containsOnlyNulls();

    answer(29, 30);
    KindAnalysis enough = found().analysis();
    assertThat(enough.learners()).isEqualTo(30);
    assertThat(enough.isJudged()).isTrue();
    assertThat(enough.discrimination()).isEqualTo(1, within(1e-9));
    assertThat(enough.distractors().stream().mapToInt(Distractor::chosen).sum()).isEqualTo(15);
  }

  @Test
  void countsAsManyAsTheListsBehindItHold() {
    answer(0, 9);
    KindAnalysis kind = found().analysis();
    ShowEvidence evidence = school.cases.showEvidence();
    Behind all = Behind.kind(tuesday.id(), "side", "lateral-side");
    assertThat(evidence.page(marlo, all, null).all()).isEqualTo(kind.answers());
    assertThat(count(all, null, Behind.Which.RIGHT)).isEqualTo(kind.right());
    assertThat(count(all, null, Behind.Which.UNSURE)).isEqualTo(kind.unsure());
    assertThat(count(all, null, Behind.Which.RAPID)).isEqualTo(kind.rapid());
    assertThat(kind.distractors()).isNotEmpty();
    for (Distractor each : kind.distractors()) {
      assertThat(count(all, each.misconception(), Behind.Which.ALL)).isEqualTo(each.chosen());
    }
  }

  private long count(Behind kind, String misconception, Behind.Which which) {
    Behind some =
        new Behind(
            kind.schoolClass(),
            null,
            null,
            kind.concept(),
            kind.form(),
            null,
            null,
            misconception,
            which);
    return school.cases.showEvidence().page(marlo, some, null).all();
  }

  @Test
  void showsTheNewestItemOfEachRightAnswerFirst() {
    int learners = 2;
    do {
      answer(learners, ++learners);
    } while (!newestAreAlike());
    List<ShowKind.Shown> items = found().items();
    assertThat(items).hasSize(3);
    assertThat(items).extracting(each -> each.item().form()).containsOnly(Form.SIDE);
    assertThat(items.get(0).id()).isEqualTo(newest().get(0).response().item());
    assertThat(items.get(0).item().key()).isNotEqualTo(items.get(1).item().key());
    assertThat(found().older()).isFalse();
  }

  private List<StoredResponse> newest() {
    Behind kind = Behind.kind(tuesday.id(), "side", "lateral-side");
    return school.cases.showEvidence().page(marlo, kind, null).rows();
  }

  /** Whether the newest two have one right answer, and an older one has another. */
  private boolean newestAreAlike() {
    List<String> keys = newest().stream().map(each -> each.response().key()).toList();
    return keys.size() > 2
        && keys.get(0).equals(keys.get(1))
        && keys.stream().distinct().count() > 1;
  }

  @Test
  void showsAnItemThatAllWereAskedOnce() {
    Composition only = new Composition(List.of(Concept.LATERAL_SIDE), List.of(Form.SIDE), null, 1);
    AssignDrill.Wanted alike = new AssignDrill.Wanted(DrillKind.FIXED, null, List.of(), 77L);
    Assignment fixed =
        school.cases.assignDrill().assign(marlo, tuesday.id(), "All", only, null, alike);
    for (String each : List.of("Tern", "Skua", "Knot")) {
      LearnerCaller learner = school.learner(tuesday, each);
      school.answerRight(learner, fixed, 1);
    }
    assertThat(found().analysis().answers()).isEqualTo(3);
    assertThat(found().items()).hasSize(1);
  }

  @Test
  void looksAtTheNewestAloneAndSaysSo() {
    answer(0, 6);
    ClassReviews reviews = new ClassReviews(store.ports().responses(), store.ports().evidence());
    DrawnAgain drawn = new DrawnAgain(store.ports(), ItemGenerator::item);
    for (int newest = 4; newest <= 6; newest++) {
      ShowKind bounded =
          new ShowKind(school.cases.openClass(), store.ports().evidence(), reviews, drawn, newest);
      ShowKind.Found found = bounded.of(marlo, tuesday.id(), Form.SIDE, Concept.LATERAL_SIDE);
      assertThat(found.analysis().answers()).isEqualTo(newest);
      assertThat(found.older()).isEqualTo(newest < 6);
      assertThat(found.items().get(0).id()).isEqualTo(found().items().get(0).id());
    }
  }

  @Test
  void saysWhichKindsAClassHasAnswered() {
    assertThat(kinds.answered(marlo, tuesday.id())).isEmpty();
    answer(0, 2);
    assertThat(kinds.answered(marlo, tuesday.id()))
        .containsExactly(
            new Evidence.Kind(Concept.LATERAL_SIDE, Form.SIDE),
            new Evidence.Kind(Concept.CARDINAL_SIDE, Form.CARDINAL_PASS));
  }

  @Test
  void showsNothingWhereNobodyAnsweredAndNothingOfAnothersClass() {
    assertThat(found().analysis().answers()).isZero();
    assertThat(found().items()).isEmpty();
    answer(0, 2);
    assertThat(kinds.of(marlo, school.schoolClass().id(), Form.SIDE, Concept.LATERAL_SIDE).items())
        .isEmpty();
    InstructorCaller other = new InstructorCaller("0".repeat(32), "Other");
    assertRefused(
        Reason.UNKNOWN_CLASS, () -> kinds.of(other, tuesday.id(), Form.SIDE, Concept.LATERAL_SIDE));
    assertRefused(Reason.UNKNOWN_CLASS, () -> kinds.answered(other, tuesday.id()));
  }
}
