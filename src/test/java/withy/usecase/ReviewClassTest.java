package withy.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static withy.usecase.Refusals.assertRefused;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.mark.Practice;
import withy.core.measurement.Review;
import withy.store.MemoryStore;
import withy.store.Store;

class ReviewClassTest {
  private final Store store = MemoryStore.create();
  private final School school = School.over(store.ports());
  private final InstructorCaller marlo = school.instructor();
  private final SchoolClass tuesday = school.schoolClass();
  private final LearnerCaller tern = school.learner(tuesday, "Tern");
  private final LearnerCaller skua = school.learner(tuesday, "Skua");
  private final Assignment drill = school.assignment(tuesday, 6, Concept.LATERAL_SIDE);
  private final ReviewClass reviewClass = school.cases.reviewClass();

  @AfterEach
  void close() {
    store.close();
  }

  @Test
  void isWhatTheResponsesThemselvesSay() {
    school.answerRight(tern, drill, 3);
    Review first = reviewClass.review(marlo, tuesday.id());
    assertThat(first).isEqualTo(Review.of(reviewClass.responses(marlo, tuesday.id())));
    assertThat(reviewClass.review(marlo, tuesday.id())).isSameAs(first);

    IssuedItem next = school.next(tern, drill);
    school.answer(tern, next, School.wrong(next));

    Review second = reviewClass.review(marlo, tuesday.id());
    assertThat(second).isNotEqualTo(first);
    assertThat(second).isEqualTo(Review.of(reviewClass.responses(marlo, tuesday.id())));
    assertThat(second.classSize()).isEqualTo(1);
  }

  @Test
  void namesThoseWhoHaveNotAnswered() {
    assertThat(reviewClass.silent(marlo, tuesday.id())).containsExactly("Skua", "Tern");
    school.answerRight(tern, drill, 1);
    assertThat(reviewClass.silent(marlo, tuesday.id())).containsExactly("Skua");
  }

  @Test
  void composesAFollowUpOnOneConcept() {
    Composition drilled = reviewClass.followUp(marlo, tuesday.id(), Concept.CARDINAL_SIDE);

    assertThat(school.cases.composeDrill().measurable(Practice.IALA_A, drilled))
        .containsExactly(Concept.CARDINAL_SIDE);
  }

  @Test
  void refusesAFollowUpOnWhatThePracticeDoesNotHave() {
    SchoolClass american = school.cases.openClass().open(marlo, "Friday", Practice.USA);

    assertRefused(
        Reason.NOTHING_TO_DRILL,
        () -> reviewClass.followUp(marlo, american.id(), Concept.CARDINAL_SIDE));
  }

  @Test
  void showsNothingOfAnothersClass() {
    InstructorCaller other = new InstructorCaller("0".repeat(32), "Other");

    assertRefused(Reason.UNKNOWN_CLASS, () -> reviewClass.review(other, tuesday.id()));
    assertRefused(Reason.UNKNOWN_CLASS, () -> reviewClass.responses(other, tuesday.id()));
    assertRefused(
        Reason.UNKNOWN_CLASS, () -> school.cases.assignDrill().progress(other, tuesday.id()));
    assertRefused(
        Reason.UNKNOWN_CLASS,
        () ->
            school
                .cases
                .assignDrill()
                .assign(other, tuesday.id(), null, drill.composition(), null));
    assertThat(school.cases.openClass().classes(other)).isEmpty();
  }

  @Test
  void showsHowFarEverybodyIs() {
    school.answerRight(tern, drill, 2);

    AssignDrill.Progress progress = school.cases.assignDrill().progress(marlo, tuesday.id()).get(0);

    assertThat(progress.assignment()).isEqualTo(drill);
    assertThat(progress.learners())
        .extracting(AssignDrill.LearnerProgress::nickname, AssignDrill.LearnerProgress::answered)
        .containsExactly(tuple("Skua", 0), tuple("Tern", 2));
    assertThat(progress.learners().get(0).lastAnsweredAt()).isNull();
    assertThat(progress.learners().get(1).lastAnsweredAt()).isNotNull();
  }

  @Test
  void tellsALearnerWhatIsSettledAndWhatIsNot() {
    assertThat(school.cases.ownStanding().of(tern)).isEmpty();
    school.answerRight(tern, drill, 6);
    for (int i = 0; i < 6; i++) {
      IssuedItem next = school.next(skua, drill);
      school.answer(skua, next, School.wrong(next));
    }

    assertThat(school.cases.ownStanding().of(tern))
        .containsExactly(
            new OwnStanding.Standing(Concept.LATERAL_SIDE, OwnStanding.State.SETTLED, 6));
    assertThat(school.cases.ownStanding().of(skua))
        .containsExactly(
            new OwnStanding.Standing(Concept.LATERAL_SIDE, OwnStanding.State.NOT_YET, 6));
  }
}
