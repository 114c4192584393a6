package withy.usecase;

import java.time.Clock;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import withy.core.item.Composition;
import withy.core.item.Form;
import withy.core.item.Item;
import withy.core.item.ItemGenerator;
import withy.core.mark.Practice;
import withy.core.measurement.PairedAnswers;

/**
 * Puts an item that a learner of a class was given to the whole class in its room, and tells what
 * has changed since they were last asked such a question.
 */
public final class AskAgain {
  private final OwnedAssignments owned;
  private final RoomAssignments roomAssignments;
  private final IssuedItems issuedItems;
  private final Turns turns;
  private final Secrets secrets;
  private final ItemSource source;

  AskAgain(OpenClass openClass, Ports ports, Clock clock, Secrets secrets, ItemSource source) {
    this.owned = new OwnedAssignments(openClass, ports.assignments());
    this.roomAssignments = new RoomAssignments(ports.assignments(), clock, secrets);
    this.issuedItems = ports.issuedItems();
    this.turns = ports.turns();
    this.secrets = secrets;
    this.source = source;
  }

  /** Whether it can be put to a room: its answers are options that can be counted. */
  public static boolean fits(Item item) {
    return !item.options().isEmpty();
  }

  /**
   * Gives the class of a learner the item that the learner was given, and closes what was put to it
   * before.
   *
   * @param title under which learners find it
   * @throws Refused UNKNOWN_ITEM; UNKNOWN_ASSIGNMENT where it is another instructor's;
   *     OUTDATED_ITEM when the generator has changed since; NOTHING_TO_DRILL where it has no
   *     options
   */
  public Assignment put(InstructorCaller instructor, String itemId, Function<Item, String> title) {
    Issue issue = issuedItems.find(itemId).orElseThrow(() -> new Refused(Reason.UNKNOWN_ITEM));
    Assignment given = owned.find(instructor, issue.assignment());
    if (!Issuing.isCurrent(issue)) {
      throw new Refused(Reason.OUTDATED_ITEM);
    }
    Item item = Issuing.redraw(source, issue, given);
    Composition about = ConceptPlan.narrowed(given.composition(), item.measures()).ofLength(1);
    return put(given, about, issue.practice(), item, title);
  }

  /**
   * Gives a class another item of the form and about the concept of the one that it was given.
   *
   * @throws Refused UNKNOWN_ASSIGNMENT, also where it is another instructor's or no item in a room
   */
  public Assignment putLike(
      InstructorCaller instructor, String assignmentId, Function<Item, String> title) {
    Assignment given = owned.find(instructor, assignmentId);
    RoomItem room = RoomAssignments.room(given);
    Item first = Issuing.redraw(source, room, given);
    List<Form> form = List.of(first.form());
    Item another = source.item(room.practice(), given.drawnFrom().by(form), secrets.seed(), 0);
    return put(given, given.composition().by(form), room.practice(), another, title);
  }

  private Assignment put(
      Assignment given,
      Composition composition,
      Practice practice,
      Item item,
      Function<Item, String> title) {
    if (!fits(item)) {
      throw new Refused(Reason.NOTHING_TO_DRILL);
    }
    return roomAssignments.put(
        given.schoolClass(), title.apply(item), composition, room(given, practice, item));
  }

  private static RoomItem room(Assignment given, Practice practice, Item item) {
    @Nullable RoomItem before = given.room();
    @Nullable String drawn = before == null ? null : before.drawn();
    return new RoomItem(practice, drawn, item.seed(), item.index(), ItemGenerator.VERSION, null);
  }

  /**
   * What changed.
   *
   * @param paired of those who had answered such a question before
   * @param others who had not
   */
  public record Change(PairedAnswers paired, int others) {
    static Change of(List<Turns.Turn> turns) {
      List<Turns.Turn> before = turns.stream().filter(each -> each.before() != null).toList();
      PairedAnswers paired =
          new PairedAnswers(
              count(before, true, true),
              count(before, false, true),
              count(before, true, false),
              count(before, false, false));
      return new Change(paired, turns.size() - before.size());
    }

    private static int count(List<Turns.Turn> turns, boolean before, boolean now) {
      return (int)
          turns.stream()
              .filter(each -> Objects.equals(each.before(), before) && each.now() == now)
              .count();
    }
  }

  /**
   * What changed between the time before and an item that was put to a room.
   *
   * @throws Refused UNKNOWN_ASSIGNMENT, also where it is another instructor's
   */
  public Change change(InstructorCaller instructor, PutToRoom.Room room) {
    Assignment put = owned.find(instructor, room.assignment().id());
    return Change.of(turns.of(put, room.item().measures(), room.item().form()));
  }
}
