package withy.usecase;

/** An instructor who can sign in. */
public record InstructorAccount(String id, String name, String passwordHash) {
  @Override
  public String toString() {
    return "InstructorAccount[" + id + "]"; // the hash belongs in no log
  }
}
