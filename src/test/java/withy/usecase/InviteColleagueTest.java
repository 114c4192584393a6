package withy.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static withy.usecase.Refusals.assertRefused;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import withy.catalogue.DrillSetCatalogue;
import withy.catalogue.WaterReader;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.store.MemoryStore;
import withy.store.Store;

class InviteColleagueTest {
  private static final Composition SHORT =
      new Composition(List.of(Concept.REGION), List.of(), null, 4);

  private final Store store = MemoryStore.create();
  private final School school =
      School.over(store.ports(new WaterReader(), new DrillSetCatalogue()));
  private final InviteColleague invite = school.cases.inviteColleague();
  private final KeepDrillSet keep = school.cases.keepDrillSet();
  private final InstructorCaller marlo = school.instructor();

  @AfterEach
  void close() {
    store.close();
  }

  private InstructorCaller quill() {
    invite.join(invite.invite(marlo).code(), "Quill", School.PASSWORD);
    return (InstructorCaller) school.cases.signIn().signIn("Quill", School.PASSWORD).caller();
  }

  @Test
  void aCodeLetsOneColleagueInHoweverItIsTyped() {
    InviteColleague.Invited invited = invite.invite(marlo);
    assertThat(invite.open(marlo)).containsExactly(invited.invitation());
    String typed = invited.code().toLowerCase(Locale.ROOT).replace("-", " ");
    assertThat(invite.join(typed, "Quill", School.PASSWORD).name()).isEqualTo("Quill");
    assertThat(invite.open(marlo)).isEmpty();
    assertThat(invite.school())
        .extracting(InstructorAccount::name)
        .containsExactly("Marlo", "Quill");
    assertRefused(
        Reason.WRONG_INVITATION, () -> invite.join(invited.code(), "Rill", School.PASSWORD));
  }

  @Test
  void aCodeMakesOneInstructorOfManyWhoHaveIt() throws Exception {
    String code = invite.invite(marlo).code();
    List<Object> outcomes =
        AtOnce.call(
            6,
            () -> {
              try {
                return invite.join(
                    code, "Quill " + Thread.currentThread().getId(), School.PASSWORD);
              } catch (Refused refused) {
                return refused.reason();
              }
            });
    assertThat(outcomes).filteredOn(InstructorAccount.class::isInstance).hasSize(1);
    assertThat(outcomes).filteredOn(Reason.WRONG_INVITATION::equals).hasSize(5);
    assertThat(invite.school()).hasSize(2);
  }

  @Test
  void aCodeIsGoodForSevenDays() {
    String code = invite.invite(marlo).code();
    school.clock.pass(InviteColleague.GOOD_FOR.minus(Duration.ofSeconds(1)));
    assertThat(invite.open(marlo)).hasSize(1);
    school.clock.pass(Duration.ofSeconds(1));
    assertThat(invite.open(marlo)).isEmpty();
    assertRefused(Reason.WRONG_INVITATION, () -> invite.join(code, "Quill", School.PASSWORD));
  }

  @Test
  void whatIsWithdrawnLetsNobodyInAndOnlyItsMakerWithdraws() {
    InstructorCaller quill = quill();
    InviteColleague.Invited invited = invite.invite(marlo);
    String id = invited.invitation().id();
    assertThat(invite.open(quill)).isEmpty();
    assertRefused(Reason.NO_INVITATION, () -> invite.withdraw(quill, id));
    invite.withdraw(marlo, id);
    assertRefused(
        Reason.WRONG_INVITATION, () -> invite.join(invited.code(), "Rill", School.PASSWORD));
    assertRefused(Reason.NO_INVITATION, () -> invite.withdraw(marlo, id));
  }

  @Test
  void aRefusedTryUsesNoCodeUp() {
    String code = invite.invite(marlo).code();
    assertRefused(Reason.NAME_TAKEN, () -> invite.join(code, "MARLO", School.PASSWORD));
    assertRefused(Reason.PASSWORD_UNFIT, () -> invite.join(code, "Quill", "short"));
    assertRefused(Reason.NAME_UNFIT, () -> invite.join(code, " ", School.PASSWORD));
    assertThat(invite.join(code, "Quill", School.PASSWORD).name()).isEqualTo("Quill");
  }

  @Test
  void invitationsDoNotPileUp() {
    for (int i = 0; i < InviteColleague.MOST; i++) {
      invite.invite(marlo);
    }
    assertRefused(Reason.TOO_MANY_INVITATIONS, () -> invite.invite(marlo));
    school.clock.pass(InviteColleague.GOOD_FOR);
    invite.invite(marlo);
    assertThat(store.ports().invitations().of(marlo.id())).hasSize(1);
  }

  @Test
  void theCodeStandsInNoTable() {
    InviteColleague.Invited invited = invite.invite(marlo);
    assertThat(invited.toString()).doesNotContain(invited.code());
    String digest = Secrets.digest(Codes.plain(invited.code()));
    assertThat(store.ports().invitations().byCode(digest)).contains(invited.invitation());
    assertThat(store.ports().invitations().byCode(invited.code())).isEmpty();
  }

  @Test
  void aColleagueReadsNothingOfAnothersClass() {
    InstructorCaller quill = quill();
    SchoolClass tuesday = school.schoolClass();
    Assignment drill = school.assignment(tuesday, 3);
    assertThat(school.cases.openClass().classes(quill)).isEmpty();
    String id = tuesday.id();
    assertRefused(Reason.UNKNOWN_CLASS, () -> school.cases.reviewClass().review(quill, id));
    assertRefused(Reason.UNKNOWN_CLASS, () -> school.cases.reviewClass().responses(quill, id));
    assertRefused(Reason.UNKNOWN_CLASS, () -> school.cases.judgeReadiness().of(quill, id));
    assertRefused(Reason.UNKNOWN_CLASS, () -> school.cases.assignDrill().progress(quill, id));
    assertRefused(
        Reason.UNKNOWN_ASSIGNMENT, () -> school.cases.assignDrill().one(quill, drill.id()));
  }

  @Test
  void aClassIsHandedOverWithAllThatIsInIt() {
    InstructorCaller quill = quill();
    SchoolClass tuesday = school.schoolClass();
    String id = tuesday.id();
    Assignment drill = school.assignment(tuesday, 3);
    LearnerCaller tern = school.learner(tuesday, "Tern");
    school.answerRight(tern, drill, 2);
    KeepCourse courses = school.cases.keepCourse();
    Course spring = courses.open(marlo, "Spring", java.time.LocalDate.of(2027, 5, 1), List.of());
    courses.take(marlo, spring.id(), List.of(id));
    HandOverClass handOver = school.cases.handOverClass();
    assertThat(handOver.colleagues(marlo))
        .extracting(InstructorAccount::id)
        .containsExactly(quill.id());
    assertRefused(Reason.NO_COLLEAGUE, () -> handOver.handOver(marlo, id, marlo.id()));
    assertRefused(Reason.NO_COLLEAGUE, () -> handOver.handOver(marlo, id, "nobody"));
    assertRefused(Reason.UNKNOWN_CLASS, () -> handOver.handOver(quill, id, marlo.id()));
    handOver.handOver(marlo, id, quill.id());
    assertRefused(Reason.UNKNOWN_CLASS, () -> school.cases.reviewClass().review(marlo, id));
    assertThat(school.cases.reviewClass().responses(quill, id)).hasSize(2);
    assertThat(school.cases.assignDrill().one(quill, drill.id()).learners()).hasSize(1);
    assertThat(courses.ofClass(quill, id)).isEmpty();
    assertThat(courses.one(marlo, spring.id()).classes()).isEmpty();
    school.answerRight(tern, drill, 1);
  }

  @Test
  void aSharedSetIsSeenCopiedAndAssignedByColleaguesAndChangedByItsOwnerAlone() {
    InstructorCaller quill = quill();
    KeptDrillSet kept = keep.keep(marlo, "Ours", SHORT);
    assertThat(keep.find(quill, kept.id())).isEmpty();
    keep.share(marlo, kept.id(), true);
    KeepDrillSet.Listed seen = keep.one(quill, kept.id());
    assertThat(seen.by()).isEqualTo("Marlo");
    assertThat(seen.own()).isFalse();
    assertThat(keep.all(quill).get(0)).isEqualTo(seen);
    assertThat(keep.copy(quill, kept.id(), "Quill's").instructor()).isEqualTo(quill.id());
    assertRefused(Reason.NO_DRILL_SET, () -> keep.rename(quill, kept.id(), "Mine"));
    assertRefused(Reason.NO_DRILL_SET, () -> keep.share(quill, kept.id(), false));
    assertRefused(Reason.NO_DRILL_SET, () -> keep.remove(quill, kept.id()));
    keep.share(marlo, kept.id(), false);
    assertThat(keep.find(quill, kept.id())).isEmpty();
    assertThat(keep.all(quill)).extracting(each -> each.set().title()).contains("Quill's");
  }

  @Test
  void aSharedSetBringsItsWaterEvenOnceItsOwnerHasDeletedIt() throws Exception {
    InstructorCaller quill = quill();
    String file = new WaterReader().authored().get(0).text();
    var water = school.cases.importWater().take(marlo, "Our estuary", file).water().water();
    KeptDrillSet kept = keep.keep(marlo, "Ours", SHORT.in(water));
    keep.share(marlo, kept.id(), true);
    school.cases.listWaters().remove(marlo, water.id());
    assertThat(keep.water(quill, water.id())).contains(water);
    KeptDrillSet copy = keep.copy(quill, kept.id(), "Quill's");
    assertThat(copy.set().composition().water()).isEqualTo(water);
    keep.remove(marlo, kept.id());
    assertThat(keep.file(quill, copy.id())).contains("\"title\":\"Our estuary\"");
  }
}
