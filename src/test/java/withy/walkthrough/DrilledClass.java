package withy.walkthrough;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import withy.catalogue.WaterReader;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Item;
import withy.core.measurement.Review;
import withy.core.response.Response;
import withy.store.MemoryStore;
import withy.store.Store;
import withy.usecase.Assignment;
import withy.usecase.InstructorCaller;
import withy.usecase.IssuedItem;
import withy.usecase.LearnerCaller;
import withy.usecase.School;
import withy.usecase.SchoolClass;
import withy.usecase.UseCases;

/**
 * A class of eight that has done a drill of 24 items: two beliefs are planted, two learners each.
 */
final class DrilledClass implements AutoCloseable {
  static final int LENGTH = 24;

  /** Nobody of the class has anything wrong about the last three. */
  static final List<Concept> DRILLED =
      List.of(Concept.LATERAL_SIDE, Concept.CARDINAL_IDENTITY, Concept.SAFE_WATER);

  /** Who believes what. */
  static final Map<String, PlantedBelief> LEARNERS = learners();

  private final Store store = MemoryStore.create();
  private final School school;
  private final InstructorCaller instructor;
  private final SchoolClass schoolClass;
  private final List<Item> asked = new ArrayList<>();

  private DrilledClass(long seed) {
    school = School.over(store.ports(new WaterReader()), seed);
    instructor = school.instructor();
    schoolClass = school.schoolClass();
  }

  private static Map<String, PlantedBelief> learners() {
    Map<String, PlantedBelief> learners = new LinkedHashMap<>();
    learners.put("Avocet", PlantedBelief.SWAPS_THE_REGION);
    learners.put("Brant", PlantedBelief.KNOWS);
    learners.put("Coot", PlantedBelief.FORGETS_THE_DIRECTION);
    learners.put("Dunlin", PlantedBelief.KNOWS);
    learners.put("Eider", PlantedBelief.KNOWS);
    learners.put("Fulmar", PlantedBelief.FORGETS_THE_DIRECTION);
    learners.put("Gannet", PlantedBelief.SWAPS_THE_REGION);
    learners.put("Heron", PlantedBelief.KNOWS);
    return learners;
  }

  /** The class, with ids and items from a seed, after everybody has answered everything. */
  static DrilledClass of(long seed, List<Concept> drilled) {
    return of(seed, new Composition(drilled, List.of(), null, LENGTH));
  }

  /** The class after everybody has answered what a composition asks. */
  static DrilledClass of(long seed, Composition composition) {
    DrilledClass made = new DrilledClass(seed);
    Assignment drill =
        made.cases()
            .assignDrill()
            .assign(made.instructor, made.schoolClass.id(), "Before the water", composition, null);
    LEARNERS.forEach((nickname, belief) -> made.drill(nickname, belief, drill));
    return made;
  }

  private void drill(String nickname, PlantedBelief belief, Assignment drill) {
    LearnerCaller learner = school.learner(schoolClass, nickname);
    Optional<IssuedItem> next = cases().nextItem().next(learner, drill.id());
    while (next.isPresent()) {
      school.clock().pass(Duration.ofSeconds(7));
      asked.add(next.get().item());
      school.answer(learner, next.get(), belief.answer(next.get().item()));
      next = cases().nextItem().next(learner, drill.id());
    }
  }

  UseCases cases() {
    return school.cases();
  }

  InstructorCaller instructor() {
    return instructor;
  }

  String id() {
    return schoolClass.id();
  }

  /** All that anybody was asked. */
  List<Item> asked() {
    return List.copyOf(asked);
  }

  Review review() {
    return cases().reviewClass().review(instructor, id());
  }

  List<Response> responses() {
    return cases().reviewClass().responses(instructor, id());
  }

  @Override
  public void close() {
    store.close();
  }
}
