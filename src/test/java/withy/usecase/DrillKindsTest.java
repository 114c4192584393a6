package withy.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static withy.core.item.Misconception.REGION_SWAPPED;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Item;
import withy.core.measurement.SequentialTest.Stand;
import withy.core.response.DrillKind;
import withy.store.MemoryStore;
import withy.store.Store;
import withy.usecase.AssignDrill.Wanted;

class DrillKindsTest {
  private static final List<Concept> SUBJECT =
      List.of(
          Concept.LATERAL_SIDE,
          Concept.CARDINAL_IDENTITY,
          Concept.SAFE_WATER,
          Concept.ISOLATED_DANGER);

  private final Store store = MemoryStore.create();
  private final School school = School.over(store.ports(), 11);
  private final InstructorCaller marlo = school.instructor();
  private final SchoolClass tuesday = school.schoolClass();

  @AfterEach
  void close() {
    store.close();
  }

  @Test
  void givesEverybodyTheSameItemsInAFixedDrillAndCountsTheirAnswers() {
    Assignment drill = assign(DrillKind.FIXED, 6, null, List.of());
    List<String> first = items(school.learner(tuesday, "Avocet"), drill, false);
    List<String> second = items(school.learner(tuesday, "Brant"), drill, true);
    assertThat(first).hasSize(6).isEqualTo(second);
    List<TalkOver.Asked> asked = school.cases().talkOver().items(marlo, drill.id());
    assertThat(asked).hasSize(6);
    assertThat(asked.stream().map(each -> word(each.item())).toList()).isEqualTo(first);
    assertThat(asked).allSatisfy(each -> assertThat(each.answered()).isEqualTo(2));
    assertThat(asked)
        .allSatisfy(
            each -> {
              assertThat(each.answers().get(0).answer()).isEqualTo(each.item().key());
              assertThat(each.answers().get(0).times()).isEqualTo(each.right());
              assertThat(each.answers().stream().mapToInt(TalkOver.Given::times).sum())
                  .isEqualTo(2);
            });
    assertThat(school.cases().talkOver().items(marlo, school.assignment(tuesday, 3).id()))
        .isEmpty();
  }

  @Test
  void endsAReadinessDrillWithTheAnswerThatDecides() {
    Assignment drill = assign(DrillKind.READINESS, 5, null, List.of());
    assertThat(drill.composition().length()).isEqualTo(40);
    assertThat(items(school.learner(tuesday, "Knot"), drill, false)).hasSize(9);
    JudgeReadiness.Readiness readiness = school.cases().judgeReadiness().of(marlo, tuesday.id());
    assertThat(readiness.ready()).isEqualTo(1);
    assertThat(readiness.interval()).isNotNull();
    LearnerCaller guessing = school.learner(tuesday, "Ruff");
    for (int i = 0; i < 3; i++) {
      IssuedItem next = school.next(guessing, drill);
      school
          .cases()
          .answerItem()
          .answer(guessing, java.util.UUID.randomUUID(), next.id(), null, 5000);
    }
    assertThat(school.cases().nextItem().next(guessing, drill.id())).isEmpty();
    assertThat(verdict("Ruff").stand()).isEqualTo(Stand.NOT_READY);
    assertThat(verdict("Knot").stand()).isEqualTo(Stand.READY);
  }

  /** Right in most items, and yet about the one that decides where the boat goes always wrong. */
  @Test
  void holdsBackWhoDoesNotKnowWhatDecidesWhereTheBoatGoes() {
    LearnerCaller tern = school.learner(tuesday, "Tern");
    items(tern, school.assignment(tuesday, 10, Concept.LATERAL_SIDE), true);
    Assignment drill = assign(DrillKind.READINESS, 5, null, List.of());
    Concept[] easy = {Concept.CARDINAL_IDENTITY, Concept.SAFE_WATER, Concept.ISOLATED_DANGER};
    assertThat(verdict("Tern").gate()).containsExactly(Concept.LATERAL_SIDE);
    Assignment without =
        school
            .cases()
            .assignDrill()
            .assign(
                marlo,
                tuesday.id(),
                "Ready?",
                new Composition(List.of(easy), List.of(), null, 5),
                null,
                new Wanted(DrillKind.READINESS, null, List.of()));
    items(tern, without, false);
    assertThat(verdict("Tern").stand()).isEqualTo(Stand.READY);
    assertThat(verdict("Tern").isReady()).isFalse();
    assertThat(drill.terms().kind()).isEqualTo(DrillKind.READINESS);
  }

  @Test
  void startsOneReadinessDrillADayForALearner() {
    school.assignment(tuesday, 4, Concept.LATERAL_SIDE, Concept.SAFE_WATER);
    LearnerCaller tern = school.learner(tuesday, "Tern");
    LearnerCaller other = school.learner(tuesday, "Skua");
    StartReadiness start = school.cases().startReadiness();
    Assignment own = start.start(tern, "Readiness drill");
    assertThat(own.composition().concepts())
        .containsExactly(Concept.LATERAL_SIDE, Concept.SAFE_WATER);
    assertThat(start.start(tern, "Readiness drill").id()).isEqualTo(own.id());
    assertThat(ids(tern)).contains(own.id());
    assertThat(ids(other)).doesNotContain(own.id());
    refused(() -> school.cases().nextItem().next(other, own.id()), Reason.UNKNOWN_ASSIGNMENT);
    school.clock().pass(StartReadiness.WAIT);
    assertThat(start.start(tern, "Readiness drill").id()).isNotEqualTo(own.id());
  }

  @Test
  void opensWhenItIsSaidToAndIsDueLaterForOneWhoIsGivenTime() {
    Instant opens = school.clock().instant().plus(Duration.ofHours(2));
    Assignment drill = assign(DrillKind.ADAPTIVE, 3, opens, List.of());
    LearnerCaller tern = school.learner(tuesday, "Tern");
    refused(() -> school.cases().nextItem().next(tern, drill.id()), Reason.NOT_OPEN);
    assertThat(school.cases().listAssignments().of(tern).get(0).opensAt())
        .isEqualTo(drill.terms().opensAt());
    school.clock().pass(Duration.ofHours(2));
    assertThat(school.cases().nextItem().next(tern, drill.id())).isPresent();
    assertThat(school.cases().listAssignments().of(tern).get(0).opensAt()).isNull();
    Instant later = Instant.parse("2026-06-01T10:00:00Z");
    school.cases().assignDrill().extend(marlo, drill.id(), tern.id(), later);
    assertThat(school.cases().listAssignments().of(tern).get(0).due()).isEqualTo(later);
    refused(
        () -> school.cases().assignDrill().extend(marlo, drill.id(), "none", later),
        Reason.UNKNOWN_LEARNER);
  }

  @Test
  void isForSomeOfTheClass() {
    LearnerCaller tern = school.learner(tuesday, "Tern");
    LearnerCaller skua = school.learner(tuesday, "Skua");
    Assignment drill = assign(DrillKind.ADAPTIVE, 3, null, List.of(tern.id()));
    assertThat(ids(tern)).containsExactly(drill.id());
    assertThat(ids(skua)).isEmpty();
    assertThat(school.cases().assignDrill().one(marlo, drill.id()).learners())
        .extracting(AssignDrill.LearnerProgress::nickname)
        .containsExactly("Tern");
    refused(() -> assign(DrillKind.ADAPTIVE, 3, null, List.of("none")), Reason.UNKNOWN_LEARNER);
  }

  @Test
  void cannotBeDueBeforeItOpens() {
    Instant now = school.clock().instant();
    Wanted later = new Wanted(DrillKind.ADAPTIVE, now.plusSeconds(60), List.of());
    Composition all = new Composition(SUBJECT, List.of(), null, 3);
    refused(
        () -> school.cases().assignDrill().assign(marlo, tuesday.id(), "", all, now, later),
        Reason.DUE_BEFORE_OPEN);
  }

  private static void refused(
      org.assertj.core.api.ThrowableAssert.ThrowingCallable call, Reason reason) {
    assertThatThrownBy(call)
        .isInstanceOfSatisfying(Refused.class, each -> assertThat(each.reason()).isEqualTo(reason));
  }

  private List<String> ids(LearnerCaller learner) {
    return school.cases().listAssignments().of(learner).stream()
        .map(ListAssignments.OwnAssignment::id)
        .toList();
  }

  private JudgeReadiness.Verdict verdict(String nickname) {
    return school.cases().judgeReadiness().of(marlo, tuesday.id()).learners().stream()
        .filter(each -> each.nickname().equals(nickname))
        .findFirst()
        .orElseThrow();
  }

  private Assignment assign(
      DrillKind kind, int length, @Nullable Instant opens, List<String> learners) {
    Composition all = new Composition(SUBJECT, List.of(), null, length);
    return school
        .cases()
        .assignDrill()
        .assign(marlo, tuesday.id(), "Drill", all, null, new Wanted(kind, opens, learners));
  }

  /** Answers a drill to its end and says what it asked. */
  private List<String> items(LearnerCaller learner, Assignment drill, boolean swaps) {
    List<String> asked = new ArrayList<>();
    Optional<IssuedItem> next = school.cases().nextItem().next(learner, drill.id());
    while (next.isPresent()) {
      Item item = next.get().item();
      asked.add(word(item));
      String believed = swaps ? item.led(REGION_SWAPPED).orElse(item.key()) : item.key();
      school.answer(learner, next.get(), believed);
      school.clock().pass(Duration.ofSeconds(5));
      next = school.cases().nextItem().next(learner, drill.id());
    }
    return asked;
  }

  private static String word(Item item) {
    return item.form().id() + " " + item.key() + " " + item.seed() + " " + item.index();
  }
}
