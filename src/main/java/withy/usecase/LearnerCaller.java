package withy.usecase;

/** A learner who joined a class. */
public record LearnerCaller(String id, String schoolClass, String nickname) implements Caller {
  static LearnerCaller of(Learner learner) {
    return new LearnerCaller(learner.id(), learner.schoolClass(), learner.nickname());
  }

  @Override
  public String name() {
    return nickname;
  }
}
