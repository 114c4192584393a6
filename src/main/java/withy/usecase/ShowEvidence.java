package withy.usecase;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.item.Item;

/** Shows an instructor the responses behind the figures of a class, and the items they answer. */
public final class ShowEvidence {
  /** Responses on a page of the list. */
  static final int PAGE = 40;

  /** Of so many of the latest answers that a belief led to, those are chosen that show it best. */
  private static final int LATEST = 100;

  private final OpenClass openClass;
  private final Learners learners;
  private final Assignments assignments;
  private final IssuedItems issuedItems;
  private final Responses responses;
  private final Evidence evidence;
  private final DrawnAgain drawnAgain;

  ShowEvidence(OpenClass openClass, Ports ports, DrawnAgain drawnAgain) {
    this.openClass = openClass;
    this.learners = ports.learners();
    this.assignments = ports.assignments();
    this.issuedItems = ports.issuedItems();
    this.responses = ports.responses();
    this.evidence = ports.evidence();
    this.drawnAgain = drawnAgain;
  }

  /**
   * A page of the responses behind a figure.
   *
   * @param all how many there are on all pages
   * @param rows the newest first
   * @param older where the next page begins; null on the last
   */
  public record Page(long all, List<StoredResponse> rows, Evidence.@Nullable Place older) {
    public Page {
      rows = List.copyOf(rows);
    }
  }

  /**
   * An item as a learner of the class was asked it.
   *
   * @param item null where the generator has changed since and may draw another one
   * @param response null while it is not answered
   * @param alike what came of it where everybody was asked the same; null elsewhere
   */
  public record Asked(
      SchoolClass schoolClass,
      Learner learner,
      Issue issue,
      @Nullable Item item,
      @Nullable StoredResponse response,
      TalkOver.@Nullable Asked alike) {}

  /**
   * A page of the responses behind a figure.
   *
   * @param before where it begins; null for the newest
   * @throws Refused UNKNOWN_CLASS; UNKNOWN_LEARNER, UNKNOWN_ASSIGNMENT where the one named is not
   *     of the class
   */
  public Page page(InstructorCaller instructor, Behind which, Evidence.@Nullable Place before) {
    openClass.of(instructor, which.schoolClass());
    if (which.learner() != null) {
      learner(which.schoolClass(), which.learner());
    }
    if (which.assignment() != null) {
      drill(which.schoolClass(), which.assignment());
    }
    List<StoredResponse> found = evidence.newest(which, before, PAGE + 1);
    if (found.size() <= PAGE) {
      return new Page(evidence.count(which), found, null);
    }
    List<StoredResponse> rows = found.subList(0, PAGE);
    StoredResponse last = rows.get(PAGE - 1);
    Evidence.Place older = new Evidence.Place(last.response().answeredAt(), last.response().item());
    return new Page(evidence.count(which), rows, older);
  }

  /**
   * A learner of a class of the instructor's.
   *
   * @throws Refused UNKNOWN_CLASS, UNKNOWN_LEARNER
   */
  public Learner learner(InstructorCaller instructor, String classId, String learner) {
    return learner(openClass.of(instructor, classId).id(), learner);
  }

  /**
   * A drill of a class of the instructor's.
   *
   * @throws Refused UNKNOWN_CLASS, UNKNOWN_ASSIGNMENT
   */
  public Assignment drill(InstructorCaller instructor, String classId, String assignment) {
    return drill(openClass.of(instructor, classId).id(), assignment);
  }

  private Assignment drill(String schoolClass, String assignment) {
    return assignments
        .find(assignment)
        .filter(each -> each.schoolClass().equals(schoolClass))
        .orElseThrow(() -> new Refused(Reason.UNKNOWN_ASSIGNMENT));
  }

  private Learner learner(String schoolClass, String learner) {
    return learners
        .member(schoolClass, learner)
        .orElseThrow(() -> new Refused(Reason.UNKNOWN_LEARNER));
  }

  /**
   * An item that a learner of the class was asked, drawn again.
   *
   * @throws Refused UNKNOWN_CLASS; UNKNOWN_ITEM, also where it was asked in another class
   */
  public Asked item(InstructorCaller instructor, String classId, String itemId) {
    SchoolClass own = openClass.of(instructor, classId);
    Issue issue = issuedItems.find(itemId).orElseThrow(() -> new Refused(Reason.UNKNOWN_ITEM));
    Learner learner =
        learners
            .member(own.id(), issue.learner())
            .orElseThrow(() -> new Refused(Reason.UNKNOWN_ITEM));
    Assignment drill =
        assignments.find(issue.assignment()).orElseThrow(() -> new Refused(Reason.UNKNOWN_ITEM));
    StoredResponse response = responses.ofItem(issue.id()).orElse(null);
    Item item = drawnAgain.of(issue, drill, response);
    TalkOver.Asked alike = item != null && isAlike(drill) ? alike(issue, item) : null;
    return new Asked(own, learner, issue, item, response, alike);
  }

  private static boolean isAlike(Assignment drill) {
    return drill.room() != null || drill.terms().kind().isAlike();
  }

  private TalkOver.Asked alike(Issue issue, Item item) {
    return TalkOver.Asked.of(item, responses.atPosition(issue.assignment(), issue.position()));
  }

  /**
   * The items of a class that show a belief best: those that it led most learners astray in, of
   * different situations where there are, the latest first of equal ones.
   *
   * @param concept that they measure, by its word
   * @param misconception by its word
   * @param most at least 1; fewer where so many cannot be drawn again
   * @throws Refused UNKNOWN_CLASS
   */
  public List<Telling> telling(
      InstructorCaller instructor, String classId, String concept, String misconception, int most) {
    SchoolClass own = openClass.of(instructor, classId);
    List<Telling> chosen = new ArrayList<>();
    for (Telling.Found each :
        Telling.ranked(evidence.led(own.id(), concept, misconception, LATEST))) {
      Item item = chosen.size() < most ? drawnAgain.of(each.item()) : null;
      if (item != null) {
        chosen.add(new Telling(each.item(), item, each.learners()));
      }
    }
    return chosen;
  }
}
