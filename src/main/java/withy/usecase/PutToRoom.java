package withy.usecase;

import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Position;
import withy.core.hydrography.DrawnWaters;
import withy.core.hydrography.SurveyedWater;
import withy.core.item.Composition;
import withy.core.item.Form;
import withy.core.item.Item;
import withy.core.item.ItemGenerator;
import withy.core.mark.Practice;
import withy.core.mark.Travel;
import withy.core.scenario.Sailing;

/**
 * Puts one item to a class in its room, the same for everybody: learners answer on their phones,
 * and once the instructor shows the answer, the wall tells how many chose what, without names.
 *
 * <p>Whoever has answered sees at once why, as in any drill: the first answer counts, so it spoils
 * nothing, and no phone has to wait for the network again. After the answer was shown nobody is
 * given the item any more; answers that were on their way are still kept.
 */
public final class PutToRoom {
  /** So many that one mark of a water is found where it can be asked about. */
  private static final int MOST_DRAWS = 500;

  private final OpenClass openClass;
  private final OwnedAssignments owned;
  private final RoomAssignments roomAssignments;
  private final Learners learners;
  private final Assignments assignments;
  private final Responses responses;
  private final Clock clock;
  private final Secrets secrets;
  private final ItemSource source;

  PutToRoom(OpenClass openClass, Ports ports, Clock clock, Secrets secrets, ItemSource source) {
    this.openClass = openClass;
    this.owned = new OwnedAssignments(openClass, ports.assignments());
    this.roomAssignments = new RoomAssignments(ports.assignments(), clock, secrets);
    this.learners = ports.learners();
    this.assignments = ports.assignments();
    this.responses = ports.responses();
    this.clock = clock;
    this.secrets = secrets;
    this.source = source;
  }

  /**
   * What is to be asked.
   *
   * @param water in which it shall lie; null for one of its own
   * @param mark where the one stands that shall be asked about; null for any
   * @param travel of the boat past that mark
   */
  public record Wanted(
      Practice practice,
      Form form,
      @Nullable SurveyedWater water,
      @Nullable Position mark,
      Travel travel) {
    private Composition composition() {
      return new Composition(List.of(), List.of(form), null, 1, water);
    }

    /** Whether an item asks what is wanted, and can be shown as a boat on a chart. */
    private boolean fits(Item item) {
      Sailing sailing = item.scenario().sailing();
      boolean sailed =
          !item.options().isEmpty() && item.options().stream().allMatch(each -> each.way() != null);
      return sailing != null && sailed && (mark == null || asksAbout(mark, item, sailing));
    }

    private boolean asksAbout(Position wanted, Item item, Sailing sailing) {
      return item.scenario().situation().travel() == travel
          && sailing.marks().get(0).position().equals(wanted);
    }
  }

  /**
   * Gives a class of the instructor's an item, and closes what was put to it before.
   *
   * @param title under which learners find it
   * @throws Refused UNKNOWN_CLASS, NAME_UNFIT; NOTHING_TO_DRILL where no item fits
   */
  public Assignment put(
      InstructorCaller instructor, String classId, Function<Item, String> title, Wanted wanted) {
    SchoolClass found = openClass.of(instructor, classId);
    Item item = drawn(wanted).orElseThrow(() -> new Refused(Reason.NOTHING_TO_DRILL));
    @Nullable SurveyedWater water = wanted.water();
    boolean isDrawn = water != null && DrawnWaters.named(water.id()).isPresent();
    RoomItem room =
        new RoomItem(
            wanted.practice(),
            water != null && isDrawn ? water.id() : null,
            item.seed(),
            item.index(),
            ItemGenerator.VERSION,
            null);
    Composition about = wanted.composition().about(item.measures());
    return roomAssignments.put(
        found.id(), title.apply(item), isDrawn ? about.in(null) : about, room);
  }

  /** The first that fits of many that are drawn; it is drawn again as it would be for a learner. */
  private Optional<Item> drawn(Wanted wanted) {
    Composition composition = wanted.composition();
    List<Composition> single =
        ItemGenerator.measurable(wanted.practice(), composition).stream()
            .map(composition::about)
            .toList();
    long seed = secrets.seed();
    int draws = single.isEmpty() ? 0 : MOST_DRAWS;
    return IntStream.range(0, draws)
        .mapToObj(i -> source.item(wanted.practice(), single.get(i % single.size()), seed, i))
        .filter(wanted::fits)
        .findFirst();
  }

  /**
   * An item in a room.
   *
   * @param answered learners of the class who answered it
   * @param learners of the class
   * @param tallies how many chose what, the options in their order and then "not sure"; none before
   *     the class was shown the answer
   */
  public record Room(
      Assignment assignment, Item item, int answered, int learners, List<Tally> tallies) {
    public Room {
      tallies = List.copyOf(tallies);
    }

    /** Whether the class was shown the answer. */
    public boolean isRevealed() {
      return assignment.room() != null && assignment.room().revealedAt() != null;
    }
  }

  /**
   * How many chose an option.
   *
   * @param option null for "not sure"
   */
  public record Tally(@Nullable String option, int times) {}

  /**
   * How far the room is.
   *
   * @throws Refused UNKNOWN_ASSIGNMENT, also where it is another instructor's; OUTDATED_ITEM when
   *     the generator has changed since
   */
  public Room room(InstructorCaller instructor, String assignmentId) {
    Assignment assignment = owned.find(instructor, assignmentId);
    RoomItem put = RoomAssignments.room(assignment);
    if (!put.isCurrent()) {
      throw new Refused(Reason.OUTDATED_ITEM);
    }
    Item item = Issuing.redraw(source, put, assignment);
    return new Room(
        assignment,
        item,
        responses.counts(assignment.id()).size(),
        learners.of(assignment.schoolClass()).size(),
        put.revealedAt() == null ? List.of() : tallies(assignment, item));
  }

  /**
   * Shows the answer to the class, and gives the item to nobody any more.
   *
   * @throws Refused UNKNOWN_ASSIGNMENT, also where it is another instructor's
   */
  public void reveal(InstructorCaller instructor, String assignmentId) {
    Assignment assignment = owned.find(instructor, assignmentId);
    if (RoomAssignments.room(assignment).revealedAt() == null) {
      assignments.reveal(assignment.id(), Moments.now(clock));
    }
  }

  private List<Tally> tallies(Assignment assignment, Item item) {
    Map<String, Integer> times = new LinkedHashMap<>();
    int unsure = 0;
    for (Responses.Chosen each : responses.chosen(assignment.id())) {
      String option = each.option();
      if (option == null) {
        unsure = each.times();
      } else {
        times.put(option, each.times());
      }
    }
    List<Tally> tallies = new ArrayList<>();
    item.options()
        .forEach(each -> tallies.add(new Tally(each.value(), times.getOrDefault(each.value(), 0))));
    tallies.add(new Tally(null, unsure));
    return tallies;
  }
}
