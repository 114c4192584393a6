package withy.usecase;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import withy.core.hydrography.SurveyedWater;
import withy.core.item.Composition;
import withy.core.response.DrillSet;

/** Keeps an instructor's drill sets, beside those that come with the program. */
public final class KeepDrillSet {
  /** Drill sets that one instructor can have. */
  public static final int MOST = 200;

  private final Instructors instructors;
  private final KeptDrillSets sets;
  private final DrillSetFiles files;
  private final WaterFiles waterFiles;
  private final Clock clock;
  private final Secrets secrets;

  KeepDrillSet(Ports ports, Clock clock, Secrets secrets) {
    this.instructors = ports.instructors();
    this.sets = ports.drillSets();
    this.files = ports.drillSetFiles();
    this.waterFiles = ports.waterFiles();
    this.clock = clock;
    this.secrets = secrets;
  }

  /**
   * A drill set to choose.
   *
   * @param kept as it is kept; null of one that comes with the program
   * @param by the name of the colleague whose it is; null of one of the instructor's own, who alone
   *     may change it
   */
  public record Listed(String id, DrillSet set, @Nullable KeptDrillSet kept, @Nullable String by) {
    /** Whether it is the instructor's own. */
    public boolean own() {
      return kept != null && by == null;
    }

    /** Whether other instructors see it that is kept. */
    public boolean shared() {
      return kept != null && kept.shared();
    }

    /** Whether it comes with the program. */
    public boolean authored() {
      return kept == null;
    }
  }

  private static Listed own(KeptDrillSet kept) {
    return new Listed(kept.id(), kept.set(), kept, null);
  }

  /** Those that colleagues share, each with the name of whose it is. */
  private List<Listed> shared(InstructorCaller instructor) {
    List<KeptDrillSet> shared = sets.sharedWith(instructor.id());
    Map<String, String> names = shared.isEmpty() ? Map.of() : names();
    return shared.stream().map(each -> by(each, names)).toList();
  }

  private static Listed by(KeptDrillSet kept, Map<String, String> names) {
    String name = Objects.requireNonNull(names.get(kept.instructor()));
    return new Listed(kept.id(), kept.set(), kept, name);
  }

  private Map<String, String> names() {
    Map<String, String> names = new TreeMap<>();
    instructors.all().forEach(each -> names.put(each.id(), each.name()));
    return names;
  }

  /** The instructor's own, those that colleagues share, then those of the program. */
  public List<Listed> all(InstructorCaller instructor) {
    List<Listed> all = new ArrayList<>();
    sets.of(instructor.id()).forEach(each -> all.add(own(each)));
    all.addAll(shared(instructor));
    all.addAll(authored());
    return all;
  }

  /** Those that come with the program. */
  public List<Listed> authored() {
    return files.all().stream().map(each -> new Listed(each.id(), each.set(), null, null)).toList();
  }

  /** The one of an id; empty where there is none, or the instructor may not see it. */
  public Optional<Listed> find(InstructorCaller instructor, String id) {
    Optional<DrillSet> authored = files.find(id);
    return authored.isPresent()
        ? authored.map(set -> new Listed(id, set, null, null))
        : sets.find(id).flatMap(each -> seen(instructor, each));
  }

  private Optional<Listed> seen(InstructorCaller instructor, KeptDrillSet kept) {
    if (kept.instructor().equals(instructor.id())) {
      return Optional.of(own(kept));
    }
    return kept.shared() ? Optional.of(by(kept, names())) : Optional.empty();
  }

  /**
   * The one of an id.
   *
   * @throws Refused NO_DRILL_SET, also where the instructor may not see it
   */
  public Listed one(InstructorCaller instructor, String id) {
    return find(instructor, id).orElseThrow(() -> new Refused(Reason.NO_DRILL_SET));
  }

  /**
   * Keeps a composition under a title.
   *
   * @throws Refused NAME_UNFIT, TOO_MANY_DRILL_SETS
   */
  public KeptDrillSet keep(InstructorCaller instructor, String title, Composition composition) {
    requireRoom(instructor);
    DrillSet set = new DrillSet(Names.name(title), composition);
    KeptDrillSet kept =
        new KeptDrillSet(secrets.id(), instructor.id(), set, false, Moments.now(clock));
    sets.add(kept);
    return kept;
  }

  void requireRoom(InstructorCaller instructor) {
    if (sets.of(instructor.id()).size() >= MOST) {
      throw new Refused(Reason.TOO_MANY_DRILL_SETS, MOST);
    }
  }

  /**
   * Keeps one that the instructor sees as the instructor's own, under another title.
   *
   * @throws Refused NO_DRILL_SET, NAME_UNFIT, TOO_MANY_DRILL_SETS
   */
  public KeptDrillSet copy(InstructorCaller instructor, String id, String title) {
    return keep(instructor, title, one(instructor, id).set().composition());
  }

  /**
   * Gives one of the instructor's own another title.
   *
   * @throws Refused NO_DRILL_SET, NAME_UNFIT
   */
  public void rename(InstructorCaller instructor, String id, String title) {
    sets.change(own(instructor, id).titled(Names.name(title)));
  }

  /**
   * Shares one of the instructor's own with the other instructors, or does so no more.
   *
   * @throws Refused NO_DRILL_SET
   */
  public void share(InstructorCaller instructor, String id, boolean withSchool) {
    sets.change(own(instructor, id).shared(withSchool));
  }

  /**
   * Forgets one of the instructor's own. Drills that were assigned from it go on.
   *
   * @throws Refused NO_DRILL_SET, also where it is another's or comes with the program
   */
  public void remove(InstructorCaller instructor, String id) {
    sets.remove(own(instructor, id).id());
  }

  private KeptDrillSet own(InstructorCaller instructor, String id) {
    return sets.find(id)
        .filter(each -> each.instructor().equals(instructor.id()))
        .orElseThrow(() -> new Refused(Reason.NO_DRILL_SET));
  }

  /**
   * The water of a drill set that the instructor sees; it may be one that was deleted since, or a
   * colleague's.
   */
  public Optional<SurveyedWater> water(InstructorCaller instructor, String water) {
    for (Listed each : all(instructor)) {
      SurveyedWater found = each.set().composition().water();
      if (found != null && found.id().equals(water)) {
        return Optional.of(found);
      }
    }
    return Optional.empty();
  }

  /**
   * The file of a drill set. A water that comes with the program is named in it; any other lies in
   * it, so that whoever imports the set has the water too.
   *
   * @throws Refused NO_DRILL_SET
   */
  public String file(InstructorCaller instructor, String id) {
    Listed listed = one(instructor, id);
    SurveyedWater water = listed.set().composition().water();
    boolean named = water == null || isAuthored(water.id());
    return files.write(listed.set(), named ? null : sets.water(id).orElseThrow());
  }

  private boolean isAuthored(String water) {
    return waterFiles.authored().stream().anyMatch(each -> each.id().equals(water));
  }
}
