package withy.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static withy.usecase.Refusals.assertRefused;

import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import withy.core.item.Concept;
import withy.core.response.Response;
import withy.store.MemoryStore;
import withy.store.Store;

class AnswerItemTest {
  private final Store store = MemoryStore.create();
  private final School school = School.over(store.ports());
  private final SchoolClass tuesday = school.schoolClass();
  private final LearnerCaller tern = school.learner(tuesday, "Tern");
  private final Assignment drill = school.assignment(tuesday, 5, Concept.LATERAL_SIDE);

  @AfterEach
  void close() {
    store.close();
  }

  @Test
  void saysWhatWasRightAndStoresAllThatStatisticsNeed() {
    IssuedItem item = school.next(tern, drill);

    AnswerItem.Answered answered = school.answer(tern, item, item.item().key());

    assertThat(answered.repeated()).isFalse();
    assertThat(answered.feedback().correct()).isTrue();
    assertThat(answered.feedback().key()).isEqualTo(School.given(item, item.item().key()));
    assertThat(answered.feedback().mistook()).isNull();
    Response stored =
        school.cases.reviewClass().responses(school.instructor(), tuesday.id()).get(0);
    assertThat(stored.learner()).isEqualTo("Tern");
    assertThat(stored.item()).isEqualTo(item.id());
    assertThat(stored.assignment()).isEqualTo(drill.id());
    assertThat(stored.practice()).isEqualTo("iala-a");
    assertThat(stored.measured()).isEqualTo("lateral-side");
    assertThat(stored.key()).isEqualTo(item.item().key()).isEqualTo(stored.option());
    assertThat(stored.offered()).hasSameSizeAs(item.options());
    assertThat(stored.shownMillis()).isEqualTo(4_000);
  }

  @Test
  void namesTheBeliefBehindAWrongAnswer() {
    IssuedItem item = school.next(tern, drill);
    String wrong = School.wrong(item);

    Feedback feedback = school.answer(tern, item, wrong).feedback();

    assertThat(feedback.correct()).isFalse();
    assertThat(feedback.chosen()).isEqualTo(wrong);
    assertThat(feedback.misconception()).isEqualTo(item.item().option(wrong).misconception());
    assertThat(feedback.mistook()).isEqualTo(item.item().option(wrong).mistook());
    assertThat(school.cases.answerItem().feedback(tern, item.id())).isEqualTo(feedback);
  }

  @Test
  void takesNotSureForNoAnswerOfAnyBelief() {
    IssuedItem item = school.next(tern, drill);

    Feedback feedback =
        school.cases.answerItem().answer(tern, UUID.randomUUID(), item.id(), null, 0).feedback();

    assertThat(feedback.correct()).isFalse();
    assertThat(feedback.misconception()).isNull();
    assertThat(feedback.chosen()).isNull();
    Response stored = store.ports().responses().ofItem(item.id()).orElseThrow().response();
    assertThat(stored.option()).isNull();
    assertThat(stored.misconception()).isNull();
    assertThat(stored.correct()).isFalse();
  }

  @Test
  void givesTheSameFeedbackWhenTheSameAnswerComesAgain() {
    IssuedItem item = school.next(tern, drill);
    UUID id = UUID.randomUUID();
    Given first = School.given(item, item.item().key());
    AnswerItem.Answered stored = school.cases.answerItem().answer(tern, id, item.id(), first, 10);

    AnswerItem.Answered again =
        school
            .cases
            .answerItem()
            .answer(tern, id, item.id(), School.given(item, School.wrong(item)), 10);

    assertThat(again.repeated()).isTrue();
    assertThat(again.feedback()).isEqualTo(stored.feedback());
    assertThat(responses()).hasSize(1);
  }

  @Test
  void refusesASecondAnswerUnderAnotherId() {
    IssuedItem item = school.next(tern, drill);
    school.answer(tern, item, School.wrong(item));

    assertRefused(Reason.ALREADY_ANSWERED, () -> school.answer(tern, item, item.item().key()));

    assertThat(responses()).singleElement().extracting(Response::correct).isEqualTo(false);
  }

  @Test
  void refusesOneIdForTwoItems() {
    UUID id = UUID.randomUUID();
    AnswerItem answers = school.cases.answerItem();
    answers.answer(tern, id, school.next(tern, drill).id(), null, 10);
    String second = school.next(tern, drill).id();

    assertRefused(Reason.RESPONSE_ID_USED, () -> answers.answer(tern, id, second, null, 10));
  }

  @Test
  void letsTwoLearnersUseTheSameId() {
    UUID id = UUID.randomUUID();
    LearnerCaller skua = school.learner(tuesday, "Skua");
    AnswerItem answers = school.cases.answerItem();

    answers.answer(tern, id, school.next(tern, drill).id(), null, 10);
    answers.answer(skua, id, school.next(skua, drill).id(), null, 10);

    assertThat(responses()).hasSize(2);
  }

  @Test
  void knowsNoItemOfAnotherLearner() {
    LearnerCaller skua = school.learner(tuesday, "Skua");
    String item = school.next(tern, drill).id();
    AnswerItem answers = school.cases.answerItem();

    assertRefused(
        Reason.UNKNOWN_ITEM, () -> answers.answer(skua, UUID.randomUUID(), item, null, 10));
    assertRefused(Reason.UNKNOWN_ITEM, () -> answers.feedback(skua, item));
    assertRefused(
        Reason.UNKNOWN_ITEM, () -> answers.answer(tern, UUID.randomUUID(), "none", null, 10));
    assertRefused(Reason.NOT_ANSWERED, () -> answers.feedback(tern, item));
  }

  @Test
  void refusesWhatNoLearnerCouldSend() {
    String item = school.next(tern, drill).id();
    AnswerItem answers = school.cases.answerItem();
    long day = 24L * 60 * 60 * 1000;

    assertRefused(
        Reason.UNKNOWN_OPTION,
        () -> answers.answer(tern, UUID.randomUUID(), item, new Given.Text("x"), 10));
    assertRefused(Reason.MALFORMED, () -> answers.answer(tern, UUID.randomUUID(), item, null, -1));
    assertRefused(
        Reason.MALFORMED, () -> answers.answer(tern, UUID.randomUUID(), item, null, day + 1));
    assertThat(responses()).isEmpty();
    answers.answer(tern, UUID.randomUUID(), item, null, day);
    assertThat(responses()).hasSize(1);
  }

  @Test
  void refusesAnItemThatAnotherGeneratorIssued() {
    Issue outdated = Outdated.issue(school, tern, drill);

    assertRefused(
        Reason.UNKNOWN_ITEM,
        () -> school.cases.answerItem().answer(tern, UUID.randomUUID(), outdated.id(), null, 10));
  }

  @Test
  void storesOneOfFortyAnswersThatComeAtOnce() throws Exception {
    IssuedItem item = school.next(tern, drill);
    Given token = School.given(item, item.item().key());
    AnswerItem answers = school.cases.answerItem();

    List<String> outcomes =
        AtOnce.call(
            40,
            () -> {
              try {
                answers.answer(tern, UUID.randomUUID(), item.id(), token, 10);
                return "stored";
              } catch (Refused e) {
                return e.reason().name();
              }
            });

    assertThat(outcomes).filteredOn("stored"::equals).hasSize(1);
    assertThat(outcomes).filteredOn("ALREADY_ANSWERED"::equals).hasSize(39);
    assertThat(responses()).hasSize(1);
  }

  @Test
  void storesOnceWhatAnImpatientPhoneSendsFortyTimes() throws Exception {
    IssuedItem item = school.next(tern, drill);
    UUID id = UUID.randomUUID();

    List<AnswerItem.Answered> outcomes =
        AtOnce.call(40, () -> school.cases.answerItem().answer(tern, id, item.id(), null, 10));

    assertThat(outcomes).filteredOn(each -> !each.repeated()).hasSize(1);
    assertThat(outcomes)
        .extracting(AnswerItem.Answered::feedback)
        .containsOnly(outcomes.get(0).feedback());
    assertThat(responses()).hasSize(1);
  }

  private List<Response> responses() {
    return school.cases.reviewClass().responses(school.instructor(), tuesday.id());
  }
}
