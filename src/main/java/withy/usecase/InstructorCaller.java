package withy.usecase;

/** An instructor who signed in. */
public record InstructorCaller(String id, String name) implements Caller {}
