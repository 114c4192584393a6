package withy.usecase;

/** Who calls, as a session says. */
public sealed interface Caller permits InstructorCaller, LearnerCaller {
  String id();

  /** What the caller is called on screen. */
  String name();
}
