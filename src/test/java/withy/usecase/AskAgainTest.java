package withy.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Form;
import withy.core.item.Item;
import withy.core.measurement.PairedAnswers;
import withy.store.MemoryStore;
import withy.store.Store;
import withy.usecase.AskAgain.Change;
import withy.usecase.PutToRoom.Room;

class AskAgainTest {
  private final Store store = MemoryStore.create();
  private final School school = School.over(store.ports());
  private final SchoolClass tuesday = school.schoolClass();
  private final LearnerCaller tern = school.learner(tuesday, "Tern");
  private final LearnerCaller skua = school.learner(tuesday, "Skua");
  private final LearnerCaller knot = school.learner(tuesday, "Knot");
  private final LearnerCaller ruff = school.learner(tuesday, "Ruff");
  private IssuedItem asked;

  @AfterEach
  void close() {
    store.close();
  }

  @BeforeEach
  void drill() {
    Assignment drill = drill(Concept.CARDINAL_IDENTITY, Form.IDENTIFY);
    asked = school.next(tern, drill);
    answer(tern, asked, false);
    answer(skua, school.next(skua, drill), false);
    answer(knot, school.next(knot, drill), true);
  }

  private Assignment drill(Concept concept, Form form) {
    Composition about = new Composition(List.of(concept), List.of(form), null, 3);
    return school
        .cases
        .assignDrill()
        .assign(school.instructor(), tuesday.id(), "Cardinal marks", about, null);
  }

  private void answer(LearnerCaller learner, IssuedItem item, boolean rightly) {
    school.clock.pass(Duration.ofMinutes(1));
    school.answer(learner, item, rightly ? item.item().key() : School.wrong(item));
  }

  private void answer(LearnerCaller learner, Assignment put, boolean rightly) {
    answer(learner, school.next(learner, put), rightly);
  }

  private Assignment put() {
    school.clock.pass(Duration.ofMinutes(1));
    return school.cases.askAgain().put(school.instructor(), asked.id(), item -> "Again");
  }

  private Room room(Assignment put) {
    return school.cases.putToRoom().room(school.instructor(), put.id());
  }

  private Change change(Assignment put) {
    return school.cases.askAgain().change(school.instructor(), room(put));
  }

  @Test
  void givesEverybodyTheItemThatOneLearnerWasGiven() {
    Assignment put = put();
    assertThat(room(put).item()).isEqualTo(asked.item());
    for (LearnerCaller each : List.of(tern, skua, ruff)) {
      assertThat(school.next(each, put).item()).isEqualTo(asked.item());
    }
  }

  @Test
  void comparesWithWhatTheSameLearnersAnsweredTheTimeBefore() {
    Assignment put = put();
    assertThat(change(put)).isEqualTo(new Change(new PairedAnswers(0, 0, 0, 0), 0));
    answer(tern, put, true);
    answer(skua, put, false);
    answer(knot, put, false);
    answer(ruff, put, true);
    assertThat(change(put)).isEqualTo(new Change(new PairedAnswers(0, 1, 1, 1), 1));
  }

  @Test
  void looksAtTheLastAnswerToAnItemOfTheSameFormAndConceptAlone() {
    answer(tern, drill(Concept.CARDINAL_IDENTITY, Form.IDENTIFY), true);
    answer(tern, drill(Concept.ISOLATED_DANGER, Form.IDENTIFY), false);
    answer(tern, drill(Concept.LATERAL_SIDE, Form.SIDE), false);
    Assignment put = put();
    answer(tern, put, true);
    assertThat(change(put).paired()).isEqualTo(new PairedAnswers(1, 0, 0, 0));
  }

  @Test
  void asksAnotherLikeItAndComparesWithTheFirst() {
    Assignment first = put();
    answer(tern, first, true);
    school.cases.putToRoom().reveal(school.instructor(), first.id());
    school.clock.pass(Duration.ofMinutes(1));
    Assignment second =
        school.cases.askAgain().putLike(school.instructor(), first.id(), item -> "Another");
    Item another = room(second).item();
    assertThat(another).isNotEqualTo(asked.item());
    assertThat(another.form()).isEqualTo(Form.IDENTIFY);
    assertThat(another.measures()).isEqualTo(Concept.CARDINAL_IDENTITY);
    answer(tern, second, false);
    assertThat(change(second).paired()).isEqualTo(new PairedAnswers(0, 0, 1, 0));
  }

  @Test
  void keepsToTheFormWhereTheDrillHadOthersToo() {
    Composition about = new Composition(List.of(Concept.CARDINAL_IDENTITY), List.of(), null, 3);
    Assignment drill =
        school
            .cases
            .assignDrill()
            .assign(school.instructor(), tuesday.id(), "Any form", about, null);
    IssuedItem item = school.next(ruff, drill);
    while (!AskAgain.fits(item.item())) {
      school.cases.answerItem().answer(ruff, UUID.randomUUID(), item.id(), null, 4_000);
      item = school.next(ruff, drill);
    }
    Assignment put = school.cases.askAgain().put(school.instructor(), item.id(), any -> "Again");
    for (int i = 0; i < 12; i++) {
      put = school.cases.askAgain().putLike(school.instructor(), put.id(), any -> "Another");
      assertThat(room(put).item().form()).isEqualTo(item.item().form());
    }
  }

  @Test
  void refusesItemsThatNobodyHasOrThatHaveNoOptions() {
    AskAgain again = school.cases.askAgain();
    Refusals.assertRefused(
        Reason.UNKNOWN_ITEM, () -> again.put(school.instructor(), "none", item -> "Again"));
    IssuedItem built = school.next(tern, drill(Concept.CARDINAL_IDENTITY, Form.ASSEMBLE));
    Refusals.assertRefused(
        Reason.NOTHING_TO_DRILL, () -> again.put(school.instructor(), built.id(), item -> "Again"));
    Assignment drill = drill(Concept.NUMBERING, Form.NUMBER);
    Refusals.assertRefused(
        Reason.UNKNOWN_ASSIGNMENT,
        () -> again.putLike(school.instructor(), drill.id(), item -> "Again"));
    InstructorCaller stranger = new InstructorCaller("0".repeat(32), "Ines");
    Refusals.assertRefused(
        Reason.UNKNOWN_ASSIGNMENT, () -> again.put(stranger, asked.id(), item -> "Again"));
  }
}
