package withy.walkthrough;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import withy.catalogue.WaterReader;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Form;
import withy.core.item.Item;
import withy.core.measurement.Review;
import withy.core.scenario.SurveyedWater;
import withy.store.MemoryStore;
import withy.store.Store;
import withy.usecase.Assignment;
import withy.usecase.IssuedItem;
import withy.usecase.LearnerCaller;
import withy.usecase.School;
import withy.usecase.SchoolClass;

/** The class of eight, that has sailed the home water in and out, mark by mark. */
final class SailedClass implements AutoCloseable {
  private static final int LENGTH = 24;

  private final Store store = MemoryStore.create();
  private final School school;
  private final SchoolClass schoolClass;
  private final List<Item> sailed = new ArrayList<>();

  private SailedClass(long seed) {
    school = School.over(store.ports(new WaterReader()), seed);
    school.instructor();
    schoolClass = school.schoolClass();
  }

  static SailedClass of(long seed, Map<String, PlantedBelief> learners) {
    SailedClass made = new SailedClass(seed);
    SurveyedWater water = new WaterReader().authored().get(0).water();
    Composition composition =
        new Composition(
            List.of(Concept.LATERAL_SIDE, Concept.PASSAGE),
            List.of(Form.SIDE, Form.PASSAGE),
            null,
            LENGTH,
            water);
    Assignment drill =
        made.school
            .cases()
            .assignDrill()
            .assign(
                made.school.instructor(), made.schoolClass.id(), "The Skarrow", composition, null);
    learners.forEach((nickname, belief) -> made.drill(nickname, belief, drill));
    return made;
  }

  private void drill(String nickname, PlantedBelief belief, Assignment drill) {
    LearnerCaller learner = school.learner(schoolClass, nickname);
    Optional<IssuedItem> next = school.cases().nextItem().next(learner, drill.id());
    while (next.isPresent()) {
      school.clock().pass(Duration.ofSeconds(11));
      sailed.add(next.get().item());
      school.answer(learner, next.get(), belief.answer(next.get().item()));
      next = school.cases().nextItem().next(learner, drill.id());
    }
  }

  /** What was asked. */
  List<Item> sailed() {
    return List.copyOf(sailed);
  }

  Review review() {
    return school.cases().reviewClass().review(school.instructor(), schoolClass.id());
  }

  @Override
  public void close() {
    store.close();
  }
}
