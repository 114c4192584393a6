package withy.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.UUID;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.ItemGenerator;
import withy.core.mark.Practice;

/** A server that is set up, with people in it; what is kept is as real as the ports are. */
public final class School {
  public static final String PASSWORD = "a long walk on the pier";

  /** Hashes that cost nothing, so that tests are quick. */
  public static final Passwords CHEAP = Passwords.withCost(64, 1);

  final MovableClock clock = new MovableClock();
  final Secrets secrets;
  final Ports ports;
  final UseCases cases;

  private School(Ports ports, Secrets secrets, ItemSource source) {
    this.ports = ports;
    this.secrets = secrets;
    this.cases = UseCases.over(ports, CHEAP, clock, secrets, source);
  }

  /** People over these ports. */
  public static School over(Ports ports) {
    return new School(ports, Secrets.secure(), ItemGenerator::item);
  }

  /** People over these ports, who are asked items from a source. */
  public static School over(Ports ports, ItemSource source) {
    return new School(ports, Secrets.secure(), source);
  }

  /** People over these ports, where ids, codes and items come from a seed. */
  public static School over(Ports ports, long seed) {
    return new School(ports, new Secrets(new Random(seed)), ItemGenerator::item);
  }

  public UseCases cases() {
    return cases;
  }

  public MovableClock clock() {
    return clock;
  }

  /** The instructor, who is made when first asked for. */
  public InstructorCaller instructor() {
    if (cases.setUp().needed()) {
      cases.setUp().setUp(cases.setUp().code(), "Marlo", PASSWORD);
    }
    return (InstructorCaller) cases.signIn().signIn("Marlo", PASSWORD).caller();
  }

  public SchoolClass schoolClass() {
    return cases.openClass().open(instructor(), "Tuesday", Practice.IALA_A);
  }

  /** A learner of the class. */
  public LearnerCaller learner(SchoolClass schoolClass, String nickname) {
    JoinClass.Joined joined = cases.joinClass().join(schoolClass.code(), nickname);
    return (LearnerCaller) joined.session().caller();
  }

  /** A drill for the class on these concepts, all if none are named. */
  public Assignment assignment(SchoolClass schoolClass, int length, Concept... concepts) {
    Composition composition = new Composition(List.of(concepts), List.of(), null, length);
    return cases
        .assignDrill()
        .assign(instructor(), schoolClass.id(), "Tuesday's marks", composition, null);
  }

  /** The learner's next item. */
  public IssuedItem next(LearnerCaller learner, Assignment assignment) {
    return cases.nextItem().next(learner, assignment.id()).orElseThrow();
  }

  /** Answers an item with the option of a value. */
  public AnswerItem.Answered answer(LearnerCaller learner, IssuedItem item, String value) {
    return cases
        .answerItem()
        .answer(learner, UUID.randomUUID(), item.id(), given(item, value), 4_000);
  }

  /** Answers the next items of a drill, all of them right. */
  public void answerRight(LearnerCaller learner, Assignment assignment, int count) {
    for (int i = 0; i < count; i++) {
      IssuedItem next = next(learner, assignment);
      answer(learner, next, next.item().key());
    }
  }

  /** How a learner gives the answer that a word stands for. */
  static Given given(IssuedItem item, String word) {
    assertThat(item.item().answer().accepts(word)).isTrue();
    return AnswerReading.given(item, word);
  }

  /** The value of some wrong option. */
  static String wrong(IssuedItem item) {
    return item.options().stream()
        .map(each -> each.option().value())
        .filter(value -> !value.equals(item.item().key()))
        .findFirst()
        .orElseThrow();
  }
}
