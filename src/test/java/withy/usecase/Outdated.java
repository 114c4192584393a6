package withy.usecase;

/** Items as an earlier version of the generator left them. */
final class Outdated {
  private Outdated() {}

  /** The learner's next item, issued by a generator that is gone. */
  static Issue issue(School school, LearnerCaller learner, Assignment assignment) {
    IssuedItems items = school.ports.issuedItems();
    Issue current = items.find(school.next(learner, assignment).id()).orElseThrow();
    items.withdraw(current.id());
    return items.add(
        new Issue(
            school.secrets.id(),
            current.learner(),
            current.assignment(),
            current.position(),
            current.practice(),
            current.concept(),
            current.seed(),
            current.index(),
            current.generatorVersion() - 1,
            current.choices(),
            current.issuedAt()));
  }
}
