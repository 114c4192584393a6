package withy.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static withy.usecase.Refusals.assertRefused;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import withy.core.item.Concept;
import withy.core.item.Misconception;
import withy.core.item.Passage;
import withy.core.measurement.LearnerState;
import withy.core.measurement.Review;
import withy.core.response.OfferedOption;
import withy.core.response.Response;
import withy.fixture.FreeItems;
import withy.store.MemoryStore;
import withy.store.Store;

/** Answers that are no choice among options, from the item to what is kept of it. */
class FreeAnswersTest {
  private final Store store = MemoryStore.create();

  @AfterEach
  void close() {
    store.close();
  }

  /** A learner with a drill of items from a source. */
  private final class Drilled {
    private final School school;
    private final SchoolClass tuesday;
    private final LearnerCaller tern;
    private final Assignment drill;

    private Drilled(ItemSource source) {
      this.school = School.over(store.ports(), source);
      this.tuesday = school.schoolClass();
      this.tern = school.learner(tuesday, "Tern");
      this.drill = school.assignment(tuesday, 5, Concept.LATERAL_SIDE);
    }

    private IssuedItem next() {
      return school.next(tern, drill);
    }

    private Feedback give(@Nullable Given given) {
      return give(UUID.randomUUID(), given).feedback();
    }

    private AnswerItem.Answered give(UUID id, @Nullable Given given) {
      return school.cases.answerItem().answer(tern, id, next().id(), given, 4_000);
    }

    private List<Response> responses() {
      return school.cases.reviewClass().responses(school.instructor(), tuesday.id());
    }
  }

  private static Given number(String typed) {
    return new Given.Text(typed);
  }

  @Test
  void keepsANumberAsOneWordWithoutOptions() {
    Drilled drilled = new Drilled(FreeItems::number);
    assertThat(drilled.next().options()).isEmpty();

    Feedback feedback = drilled.give(number(" 19,00 M "));

    assertThat(feedback.correct()).isTrue();
    assertThat(feedback.key()).isEqualTo(number("19.4"));
    assertThat(feedback.chosen()).isEqualTo("19");
    assertThat(drilled.responses())
        .singleElement()
        .satisfies(
            kept -> {
              assertThat(kept.key()).isEqualTo("19.4");
              assertThat(kept.option()).isEqualTo("19");
              assertThat(kept.offered()).isEmpty();
              assertThat(kept.correct()).isTrue();
              assertThat(kept.misconception()).isNull();
            });
  }

  @Test
  void namesTheBeliefBehindANumber() {
    Drilled drilled = new Drilled(FreeItems::number);

    Feedback feedback = drilled.give(number("13.1"));

    assertThat(feedback.correct()).isFalse();
    assertThat(feedback.misconception()).isEqualTo(Misconception.REGION_SWAPPED);
    assertThat(feedback.mistook()).isNotNull();
    assertThat(drilled.responses().get(0).misconception()).isEqualTo("region-swapped");
  }

  @Test
  void takesANumberThatNoBeliefExplainsForAnErrorAlone() {
    Drilled drilled = new Drilled(FreeItems::number);

    Feedback feedback = drilled.give(number("700"));

    assertThat(feedback.misconception()).isEqualTo(Misconception.UNEXPLAINED);
    assertThat(feedback.mistook()).isNull();
    assertThat(drilled.responses().get(0).misconception()).isEqualTo("unexplained");
    assertThat(drilled.give(number("13.4")).correct()).as("the next item").isFalse();
  }

  @Test
  void refusesWhatIsNoNumberAndKeepsTheItemOpen() {
    Drilled drilled = new Drilled(FreeItems::number);
    String open = drilled.next().id();

    assertRefused(Reason.NO_NUMBER, () -> drilled.give(number("far")));
    assertRefused(Reason.NO_NUMBER, () -> drilled.give(new Given.Parts(Map.of("body", "x"))));
    assertRefused(Reason.OTHER_UNIT, () -> drilled.give(number("19.4 km")));

    assertThat(drilled.responses()).isEmpty();
    assertThat(drilled.next().id()).isEqualTo(open);
  }

  @Test
  void givesTheSameFeedbackToANumberThatIsSentAgain() {
    Drilled drilled = new Drilled(FreeItems::number);
    UUID id = UUID.randomUUID();
    String item = drilled.next().id();
    AnswerItem.Answered first = drilled.give(id, number("19.4"));

    AnswerItem.Answered again =
        drilled.school.cases.answerItem().answer(drilled.tern, id, item, number("far"), 1);

    assertThat(again.repeated()).isTrue();
    assertThat(again.feedback()).isEqualTo(first.feedback());
    assertThat(drilled.responses()).hasSize(1);
    assertRefused(
        Reason.ALREADY_ANSWERED,
        () ->
            drilled
                .school
                .cases
                .answerItem()
                .answer(drilled.tern, UUID.randomUUID(), item, number("19.4"), 1));
  }

  @Test
  void keepsAnAssemblyAsOneWordOfItsParts() {
    Drilled drilled = new Drilled(FreeItems::assembly);
    IssuedItem item = drilled.next();
    Given right = AnswerReading.given(item, FreeItems.PORT_HAND.key());

    Feedback feedback = drilled.give(right);

    assertThat(feedback.correct()).isTrue();
    assertThat(feedback.key()).isEqualTo(right);
    Response kept = drilled.responses().get(0);
    assertThat(kept.option()).isEqualTo("can/plain-red/can/Fl_R_2.5s").isEqualTo(kept.key());
    assertThat(kept.offered()).isEmpty();
  }

  @Test
  void namesTheBeliefBehindWrongParts() {
    Drilled drilled = new Drilled(FreeItems::assembly);
    String led = FreeItems.PORT_HAND.led(Misconception.SHAPE_SWAPPED).orElseThrow();

    Feedback feedback = drilled.give(AnswerReading.given(drilled.next(), led));

    assertThat(feedback.correct()).isFalse();
    assertThat(feedback.misconception()).isEqualTo(Misconception.SHAPE_SWAPPED);
    assertThat(feedback.chosen()).isEqualTo(led);
  }

  @Test
  void refusesAnAssemblyThatIsNotWhole() {
    Drilled drilled = new Drilled(FreeItems::assembly);
    IssuedItem item = drilled.next();
    Map<String, String> whole =
        ((Given.Parts) AnswerReading.given(item, FreeItems.PORT_HAND.key())).tokens();

    assertRefused(Reason.INCOMPLETE_ANSWER, () -> drilled.give(without(whole, "light")));
    assertRefused(Reason.INCOMPLETE_ANSWER, () -> drilled.give(number("can")));
    assertRefused(Reason.UNKNOWN_OPTION, () -> drilled.give(with(whole, "light", "can")));
    assertRefused(
        Reason.UNKNOWN_OPTION, () -> drilled.give(with(whole, "light", whole.get("body"))));
    assertRefused(Reason.UNKNOWN_OPTION, () -> drilled.give(with(whole, "sound", "bell")));
    assertThat(drilled.responses()).isEmpty();
  }

  @Test
  void keepsAPassageAsOneWordOfItsSides() {
    Drilled drilled = new Drilled(FreeItems::passage);
    IssuedItem item = drilled.next();
    Given right = AnswerReading.given(item, item.item().key());

    Feedback feedback = drilled.give(right);

    assertThat(feedback.correct()).isTrue();
    assertThat(feedback.key()).isEqualTo(right);
    Response kept = drilled.responses().get(0);
    assertThat(kept.option()).isEqualTo(item.item().key()).isEqualTo(kept.key());
    assertThat(kept.concepts()).startsWith("passage");
    assertThat(kept.offered())
        .as("whoever holds one of these would have answered otherwise")
        .hasSizeGreaterThan(1)
        .allSatisfy(
            each ->
                assertThat(each.misconception() == null).isEqualTo(each.value().equals(kept.key())))
        .extracting(OfferedOption::belief)
        .containsAnyOf("region-swapped", "direction-ignored");
  }

  @Test
  void namesTheBeliefBehindTheSidesOfAPassage() {
    Drilled drilled = new Drilled(FreeItems::passage);
    IssuedItem item = drilled.next();
    Passage passage = (Passage) item.item().answer();
    String led = passage.led(Misconception.REGION_SWAPPED).orElseThrow();

    Feedback feedback = drilled.give(AnswerReading.given(item, led));

    assertThat(feedback.correct()).isFalse();
    assertThat(feedback.chosen()).isEqualTo(led);
    assertThat(passage.led(Objects.requireNonNull(feedback.misconception()))).contains(led);
  }

  @Test
  void refusesAPassageThatIsNotWholeAndKeepsItOpen() {
    Drilled drilled = new Drilled(FreeItems::passage);
    IssuedItem item = drilled.next();
    Map<String, String> whole =
        ((Given.Parts) AnswerReading.given(item, item.item().key())).tokens();
    assertThat(whole).containsKeys("0", "1", "2").hasSize(item.legs().size());

    assertRefused(Reason.INCOMPLETE_ANSWER, () -> drilled.give(without(whole, "1")));
    assertRefused(Reason.INCOMPLETE_ANSWER, () -> drilled.give(number("leave-to-port")));
    assertRefused(Reason.UNKNOWN_OPTION, () -> drilled.give(with(whole, "1", "leave-to-port")));
    assertRefused(Reason.UNKNOWN_OPTION, () -> drilled.give(with(whole, "1", whole.get("0"))));
    assertRefused(Reason.UNKNOWN_OPTION, () -> drilled.give(with(whole, "9", whole.get("0"))));

    assertThat(drilled.responses()).isEmpty();
    assertThat(drilled.next().id()).isEqualTo(item.id());
    assertThat(drilled.give(new Given.Parts(whole)).correct()).isTrue();
  }

  @Test
  void sidesGoByTokensThatTellNothing() {
    IssuedItem item = new Drilled(FreeItems::passage).next();
    List<String> tokens =
        item.legs().stream().flatMap(leg -> leg.sides().stream()).map(OpaqueOption::token).toList();
    assertThat(tokens)
        .hasSizeGreaterThanOrEqualTo(6)
        .doesNotHaveDuplicates()
        .allMatch(each -> each.length() == 12);
  }

  @Test
  void partsGoByTokensThatTellNothing() {
    IssuedItem item = new Drilled(FreeItems::assembly).next();
    List<String> tokens =
        item.slots().stream()
            .flatMap(slot -> slot.parts().stream())
            .map(OpaqueSlot.OpaquePart::token)
            .toList();
    assertThat(tokens).hasSize(10).doesNotHaveDuplicates().allMatch(each -> each.length() == 12);
  }

  @Test
  void takesNotSureForBothKinds() {
    assertThat(new Drilled(FreeItems::number).give(null).chosen()).isNull();
  }

  @Test
  void tellsWhoseNumbersFollowABelief() {
    Drilled drilled = new Drilled(FreeItems::number);
    for (int i = 0; i < 3; i++) {
      drilled.give(number("13.4"));
    }
    LearnerState state = Review.of(drilled.responses()).learners().get(0);
    assertThat(state.namedMisconception()).isEqualTo("region-swapped");
  }

  private static Given without(Map<String, String> parts, String slot) {
    Map<String, String> fewer = new LinkedHashMap<>(parts);
    fewer.remove(slot);
    return new Given.Parts(fewer);
  }

  private static Given with(Map<String, String> parts, String slot, String token) {
    Map<String, String> more = new LinkedHashMap<>(parts);
    more.put(slot, token);
    return new Given.Parts(more);
  }
}
