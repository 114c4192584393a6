package withy.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static withy.usecase.Refusals.assertRefused;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import withy.catalogue.DrillSetCatalogue;
import withy.catalogue.WaterReader;
import withy.core.course.Session;
import withy.core.hydrography.SurveyedWater;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.mark.Practice;
import withy.core.response.DrillSet;
import withy.store.MemoryStore;
import withy.store.Store;

class KeepCourseTest {
  private static final String WATER = new WaterReader().authored().get(0).text();

  private final Store store = MemoryStore.create();
  private final School school =
      School.over(store.ports(new WaterReader(), new DrillSetCatalogue()));
  private final KeepCourse courses = school.cases.keepCourse();
  private final InstructorCaller marlo = school.instructor();
  private final LocalDate today = school.cases.planCourse().today(ZoneOffset.UTC);

  @AfterEach
  void close() {
    store.close();
  }

  private SurveyedWater imported() throws UnfitWater {
    return school.cases.importWater().take(marlo, "Our estuary", WATER).water().water();
  }

  private Course spring(SurveyedWater... waters) {
    return courses.open(marlo, "Spring", today.plusDays(30), List.of(waters));
  }

  private List<Session> proposed(SchoolClass schoolClass) {
    return school
        .cases
        .planCourse()
        .propose(marlo, schoolClass.id(), ZoneOffset.UTC, today.plusDays(30), 3, null);
  }

  /** As a server that starts anew reads it. */
  private Course anew(String id) {
    Ports again = store.ports(new WaterReader(), new DrillSetCatalogue());
    return again.courses().find(id).orElseThrow();
  }

  private DrillSet nights() {
    return school.cases.keepDrillSet().one(marlo, "by-night").set();
  }

  @Test
  void keepsNameDayWatersClassesAndPlan() throws UnfitWater {
    SurveyedWater water = imported();
    SchoolClass tuesday = school.schoolClass();
    Course course = spring(water);
    courses.take(marlo, course.id(), List.of(tuesday.id()));
    List<Session> sessions = proposed(tuesday);
    courses.plan(marlo, course.id(), sessions, water);
    courses.drill(marlo, course.id(), 1, nights());
    Course read = anew(course.id());
    assertThat(read).isEqualTo(courses.one(marlo, course.id()));
    assertThat(read.name()).isEqualTo("Spring");
    assertThat(read.practical()).isEqualTo(today.plusDays(30));
    assertThat(read.waters()).containsExactly(water);
    assertThat(read.classes()).containsExactly(tuesday.id());
    assertThat(read.sessions()).extracting(PlannedSession::session).isEqualTo(sessions);
    assertThat(read.sessions()).extracting(PlannedSession::water).containsOnly(water);
    assertThat(read.sessions().get(1).set()).isEqualTo(nights());
    assertThat(courses.ofClass(marlo, tuesday.id())).contains(read);
  }

  @Test
  void aClassTakesOneCourseAtATime() {
    SchoolClass tuesday = school.schoolClass();
    Course spring = spring();
    Course summer = courses.open(marlo, "Summer", today.plusDays(90), List.of());
    courses.take(marlo, spring.id(), List.of(tuesday.id()));
    courses.take(marlo, summer.id(), List.of(tuesday.id(), tuesday.id()));
    assertThat(courses.one(marlo, spring.id()).classes()).isEmpty();
    assertThat(courses.ofClass(marlo, tuesday.id()).orElseThrow().id()).isEqualTo(summer.id());
    courses.take(marlo, summer.id(), List.of());
    assertThat(courses.ofClass(marlo, tuesday.id())).isEmpty();
  }

  @Test
  void runAgainItsDaysLieAsLongBeforeTheNewPractical() throws UnfitWater {
    SchoolClass tuesday = school.schoolClass();
    Course before = spring(imported());
    courses.take(marlo, before.id(), List.of(tuesday.id()));
    courses.plan(marlo, before.id(), proposed(tuesday), null);
    courses.drill(marlo, before.id(), 0, nights());
    LocalDate next = today.plusDays(30).plusYears(1);
    Course again = courses.again(marlo, before.id(), "Spring again", next);
    Course read = anew(again.id());
    assertThat(read).isEqualTo(again);
    assertThat(read.practical()).isEqualTo(next);
    assertThat(read.classes()).isEmpty();
    assertThat(read.waters()).isEqualTo(before.waters());
    assertThat(read.sessions().get(0).set()).isEqualTo(nights());
    List<PlannedSession> old = courses.one(marlo, before.id()).sessions();
    assertThat(read.sessions()).hasSameSizeAs(old).isNotEmpty();
    for (int i = 0; i < old.size(); i++) {
      Session moved = read.sessions().get(i).session();
      assertThat(moved.on()).isEqualTo(next.minusDays(old.get(i).session().daysLeft()));
      assertThat(moved.concepts()).isEqualTo(old.get(i).session().concepts());
    }
    assertThat(courses.one(marlo, before.id()).classes()).containsExactly(tuesday.id());
  }

  @Test
  void movedThePracticalTakesTheDaysAlong() {
    SchoolClass tuesday = school.schoolClass();
    Course course = spring();
    courses.plan(marlo, course.id(), proposed(tuesday), null);
    courses.change(marlo, course.id(), "Later", today.plusDays(37), List.of());
    Course read = anew(course.id());
    assertThat(read.name()).isEqualTo("Later");
    assertThat(read.sessions().get(0).on()).isEqualTo(today.plusDays(7));
  }

  @Test
  void deletedItLeavesClassesDrillsAndAnswers() throws UnfitWater {
    SurveyedWater water = imported();
    SchoolClass tuesday = school.schoolClass();
    Course course = spring(water);
    courses.take(marlo, course.id(), List.of(tuesday.id()));
    courses.plan(marlo, course.id(), proposed(tuesday), water);
    Composition in = new Composition(List.of(Concept.LATERAL_SIDE), List.of(), null, 3, water);
    Assignment drill = school.cases.assignDrill().assign(marlo, tuesday.id(), "In it", in, null);
    LearnerCaller tern = school.learner(tuesday, "Tern");
    school.answerRight(tern, drill, 2);
    courses.remove(marlo, course.id());
    school.cases.listWaters().remove(marlo, water.id());
    assertThat(courses.all(marlo)).isEmpty();
    assertThat(courses.ofClass(marlo, tuesday.id())).isEmpty();
    school.answerRight(tern, drill, 1);
    assertThat(school.ports.responses().of(tern.id(), drill.id())).hasSize(3);
  }

  @Test
  void aWaterThatWasDeletedIsStillSailedByTheCourse() throws UnfitWater {
    SurveyedWater water = imported();
    Course course = spring(water);
    school.cases.listWaters().remove(marlo, water.id());
    assertThat(anew(course.id()).waters()).containsExactly(water);
    assertThat(courses.water(marlo, water.id())).contains(water);
    courses.change(marlo, course.id(), "Dry", today.plusDays(30), List.of());
    assertThat(courses.water(marlo, water.id())).isEmpty();
  }

  @Test
  void anothersCourseIsNotThereAndNobodyTakesAnothersClassIntoOne() {
    InviteColleague invite = school.cases.inviteColleague();
    invite.join(invite.invite(marlo).code(), "Quill", School.PASSWORD);
    InstructorCaller quill =
        (InstructorCaller) school.cases.signIn().signIn("Quill", School.PASSWORD).caller();
    Course course = spring();
    String id = course.id();
    assertRefused(Reason.NO_COURSE, () -> courses.one(quill, id));
    assertRefused(Reason.NO_COURSE, () -> courses.remove(quill, id));
    assertRefused(Reason.NO_COURSE, () -> courses.take(quill, id, List.of()));
    assertRefused(Reason.NO_COURSE, () -> courses.plan(quill, id, List.of(), null));
    assertRefused(Reason.NO_COURSE, () -> courses.drill(quill, id, 0, null));
    assertRefused(Reason.NO_COURSE, () -> courses.again(quill, id, "Mine", today));
    assertRefused(Reason.NO_COURSE, () -> courses.change(quill, id, "Mine", today, List.of()));
    SchoolClass theirs = school.cases.openClass().open(quill, "Friday", Practice.IALA_A);
    assertRefused(Reason.UNKNOWN_CLASS, () -> courses.take(marlo, id, List.of(theirs.id())));
    assertRefused(Reason.UNKNOWN_CLASS, () -> courses.ofClass(marlo, theirs.id()));
    assertThat(courses.all(quill)).isEmpty();
  }

  @Test
  void aPlanHasTheDaysThatItHas() {
    Course course = spring();
    assertRefused(Reason.MALFORMED, () -> courses.drill(marlo, course.id(), 0, nights()));
    assertRefused(Reason.MALFORMED, () -> courses.drill(marlo, course.id(), -1, nights()));
    assertRefused(Reason.NAME_UNFIT, () -> courses.open(marlo, " ", today, List.of()));
  }
}
