package withy.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import withy.core.Chance;
import withy.core.geometry.Bearing;
import withy.core.hydrography.Blueprint;
import withy.core.hydrography.DrawnWaters;
import withy.core.hydrography.SurveyedWater;
import withy.core.item.Form;
import withy.core.item.Item;
import withy.core.mark.Practice;
import withy.core.mark.Travel;
import withy.core.waterway.Call;
import withy.core.waterway.Voyage;
import withy.store.MemoryStore;
import withy.store.Store;
import withy.usecase.ListAssignments.OwnAssignment;
import withy.usecase.PutToRoom.Room;
import withy.usecase.PutToRoom.Tally;
import withy.usecase.PutToRoom.Wanted;

class PutToRoomTest {
  private static final Practice REGION_B = Practice.IALA_B;
  private static final SurveyedWater RIVER =
      DrawnWaters.find(DrawnWaters.id(Blueprint.RIVER, 3)).orElseThrow();

  private final Store store = MemoryStore.create();
  private final School school = School.over(store.ports());
  private final SchoolClass tuesday = school.schoolClass();
  private final LearnerCaller tern = school.learner(tuesday, "Tern");
  private final LearnerCaller skua = school.learner(tuesday, "Skua");
  private final LearnerCaller knot = school.learner(tuesday, "Knot");

  @AfterEach
  void close() {
    store.close();
  }

  private static Call mark() {
    return Voyage.of(RIVER.marked(REGION_B, Chance.of(1, 0)), REGION_B, "", true).calls().get(3);
  }

  private Assignment put() {
    return put(tuesday);
  }

  private Assignment put(SchoolClass to) {
    Wanted wanted = new Wanted(REGION_B, Form.SIDE, RIVER, mark().mark().position(), Travel.WITH);
    return put(to, wanted);
  }

  private Assignment put(Wanted wanted) {
    return put(tuesday, wanted);
  }

  private Assignment put(SchoolClass to, Wanted wanted) {
    return school
        .cases
        .putToRoom()
        .put(school.instructor(), to.id(), item -> "On the wall", wanted);
  }

  private Room room(Assignment put) {
    return school.cases.putToRoom().room(school.instructor(), put.id());
  }

  private void reveal(Assignment put) {
    school.cases.putToRoom().reveal(school.instructor(), put.id());
  }

  @Test
  void asksEverybodyTheSameAboutTheMarkThatIsWanted() {
    Assignment put = put();
    Item asked = room(put).item();
    assertThat(asked.scenario().sailing().marks().get(0).position())
        .isEqualTo(mark().mark().position());
    assertThat(asked.scenario().practice()).as("not that of the class").isEqualTo(REGION_B);
    assertThat(asked.key()).isEqualTo(mark().side().id());
    for (LearnerCaller each : List.of(tern, skua)) {
      assertThat(school.next(each, put).item()).isEqualTo(asked);
    }
  }

  @Test
  void countsAnswersAndTellsWhatWasChosenOnlyOnceItIsShown() {
    Assignment put = put();
    Item asked = room(put).item();
    IssuedItem first = school.next(tern, put);
    school.answer(tern, first, asked.key());
    school.answer(skua, school.next(skua, put), School.wrong(first));
    assertThat(room(put).answered()).isEqualTo(2);
    assertThat(room(put).learners()).isEqualTo(3);
    assertThat(room(put).tallies()).isEmpty();
    reveal(put);
    assertThat(room(put).isRevealed()).isTrue();
    assertThat(room(put).tallies())
        .containsExactlyInAnyOrder(
            new Tally(asked.key(), 1), new Tally(School.wrong(first), 1), new Tally(null, 0));
  }

  @Test
  void givesTheItemToNobodyAfterItWasShownButKeepsAnswersOnTheirWay() {
    Assignment put = put();
    IssuedItem open = school.next(tern, put);
    reveal(put);
    assertThat(school.cases.nextItem().next(skua, put.id())).isEqualTo(Optional.empty());
    assertThat(school.cases.listAssignments().of(skua)).isEmpty();
    assertThat(school.answer(tern, open, open.item().key()).feedback().correct()).isTrue();
    assertThat(room(put).answered()).isEqualTo(1);
    assertThat(school.cases.nextItem().next(tern, put.id())).isEmpty();
  }

  @Test
  void closesWhatWasPutToTheClassBeforeSoThatOneItemWaits() {
    Assignment drill = school.assignment(tuesday, 2);
    Assignment first = put();
    IssuedItem open = school.next(tern, first);
    SchoolClass thursday = school.schoolClass();
    Assignment elsewhere = put(thursday);
    Assignment second = put();
    assertThat(room(first).isRevealed()).isTrue();
    assertThat(room(second).isRevealed()).isFalse();
    assertThat(room(elsewhere).isRevealed()).as("another class").isFalse();
    assertThat(school.cases.listAssignments().of(skua))
        .extracting(OwnAssignment::id)
        .containsExactlyInAnyOrder(second.id(), drill.id());
    school.answer(tern, open, open.item().key());
    assertThat(room(first).answered()).as("was on its way").isEqualTo(1);
  }

  @Test
  void tellsOfWhatWasClosedOnlyWhoeverAsksForIt() {
    Assignment put = put();
    reveal(put);
    assertThat(school.cases.listAssignments().of(skua)).isEmpty();
    assertThat(school.cases.listAssignments().one(skua, put.id()).answered()).isZero();
    LearnerCaller stranger = school.learner(school.schoolClass(), "Dunlin");
    Refusals.assertRefused(
        Reason.UNKNOWN_ASSIGNMENT, () -> school.cases.listAssignments().one(stranger, put.id()));
  }

  @Test
  void storesAnswersLikeAnyOthersSoThatReviewsCountThem() {
    Assignment put = put();
    IssuedItem item = school.next(tern, put);
    assertThat(school.cases.listAssignments().of(tern))
        .singleElement()
        .satisfies(own -> assertThat(own.waits()).isTrue());
    school.answer(tern, item, School.wrong(item));
    assertThat(school.cases.listAssignments().of(tern).get(0).waits()).isFalse();
    assertThat(school.cases.reviewClass().responses(school.instructor(), tuesday.id()))
        .singleElement()
        .satisfies(
            response -> {
              assertThat(response.practice()).isEqualTo("iala-b");
              assertThat(response.form()).isEqualTo("side");
              assertThat(response.concepts()).first().isEqualTo("lateral-side");
              assertThat(response.correct()).isFalse();
            });
    assertThat(school.cases.answerItem().feedback(tern, item.id()).correct()).isFalse();
    assertThat(school.next(knot, put).id()).isNotEqualTo(item.id());
  }

  @Test
  void refusesWhatIsNoRoomsItemAndWhatNoItemCanAsk() {
    Assignment drill = school.assignment(tuesday, 2);
    Refusals.assertRefused(Reason.UNKNOWN_ASSIGNMENT, () -> room(drill));
    Refusals.assertRefused(Reason.UNKNOWN_ASSIGNMENT, () -> reveal(drill));
    Wanted nowhere =
        new Wanted(
            REGION_B,
            Form.SIDE,
            RIVER,
            mark().mark().position().moved(Bearing.of(90), 5),
            Travel.WITH);
    Refusals.assertRefused(Reason.NOTHING_TO_DRILL, () -> put(nowhere));
  }

  @Test
  void asksWhereTheChartOverrulesInAWaterOfItsOwn() {
    Wanted wanted = new Wanted(REGION_B, Form.CHART_OVER_RULE, null, null, Travel.NONE);
    Assignment put = put(wanted);
    assertThat(school.next(tern, put).item()).isEqualTo(room(put).item());
    assertThat(room(put).item().form()).isEqualTo(Form.CHART_OVER_RULE);
  }
}
