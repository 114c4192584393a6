package withy.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static withy.usecase.Refusals.assertRefused;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import withy.store.MemoryStore;
import withy.store.Store;

class SignInTest {
  private final Store store = MemoryStore.create();
  private final School school = School.over(store.ports());
  private final InstructorCaller marlo = school.instructor();
  private final SignIn signIn = school.cases.signIn();

  @AfterEach
  void close() {
    store.close();
  }

  @Test
  void letsTheInstructorInWithANewSessionEachTime() {
    Session one = signIn.signIn("Marlo", School.PASSWORD);
    Session other = signIn.signIn("  marlo ", School.PASSWORD);

    assertThat(one.caller()).isEqualTo(marlo);
    assertThat(other.token()).isNotEqualTo(one.token()).hasSize(43);
    assertThat(other.requestToken()).isNotEqualTo(one.requestToken()).isNotEqualTo(other.token());
    assertThat(signIn.resume(one.token())).contains(one);
  }

  @Test
  void doesNotSayWhetherNameOrPasswordIsWrong() {
    assertRefused(Reason.WRONG_SIGN_IN, () -> signIn.signIn("Marlo", "wrong password"));
    assertRefused(Reason.WRONG_SIGN_IN, () -> signIn.signIn("Nobody", School.PASSWORD));
    assertRefused(Reason.WRONG_SIGN_IN, () -> signIn.signIn("Nobody' OR '1'='1", "x"));
  }

  @Test
  void makesAWrongPasswordWaitLongerAndLongerUpToAMinute() {
    List<Long> waits = new ArrayList<>();
    for (int i = 0; i < 9; i++) {
      assertRefused(Reason.WRONG_SIGN_IN, () -> signIn.signIn("Marlo", "wrong password"));
      Duration wait = waitOf("Marlo");
      waits.add(wait.toSeconds());
      school.clock.pass(wait);
    }

    assertThat(waits).containsExactly(1L, 2L, 4L, 8L, 16L, 32L, 60L, 60L, 60L);
    assertThat(signIn.signIn("Marlo", School.PASSWORD).caller()).isEqualTo(marlo);
    assertRefused(Reason.WRONG_SIGN_IN, () -> signIn.signIn("Marlo", "wrong password"));
    assertThat(waitOf("Marlo")).isEqualTo(Duration.ofSeconds(1));
  }

  @Test
  void makesNobodyElseWait() {
    assertRefused(Reason.WRONG_SIGN_IN, () -> signIn.signIn("Nobody", "wrong password"));

    assertThat(signIn.signIn("Marlo", School.PASSWORD).caller()).isEqualTo(marlo);
  }

  private Duration waitOf(String name) {
    Refused refused =
        catchThrowableOfType(Refused.class, () -> signIn.signIn(name, School.PASSWORD));
    assertThat(refused.reason()).isEqualTo(Reason.TOO_MANY_TRIES);
    return (Duration) refused.details().get(0);
  }

  @Test
  void endsAnInstructorsSessionAfterHalfAnHourWithoutUse() {
    String token = signIn.signIn("Marlo", School.PASSWORD).token();

    school.clock.pass(Duration.ofMinutes(29));
    assertThat(signIn.resume(token)).isPresent();
    school.clock.pass(Duration.ofMinutes(29));
    assertThat(signIn.resume(token)).isPresent();
    school.clock.pass(Duration.ofMinutes(30));
    assertThat(signIn.resume(token)).isEmpty();
  }

  @Test
  void endsAnInstructorsSessionAfterTwelveHoursInAnyCase() {
    String token = signIn.signIn("Marlo", School.PASSWORD).token();

    for (int i = 0; i < 12 * 3 - 1; i++) {
      school.clock.pass(Duration.ofMinutes(20));
      assertThat(signIn.resume(token)).isPresent();
    }
    school.clock.pass(Duration.ofMinutes(20));
    assertThat(signIn.resume(token)).isEmpty();
  }

  @Test
  void letsALearnerComeBackForHalfAYear() {
    SchoolClass tuesday = school.schoolClass();
    String token = school.cases.joinClass().join(tuesday.code(), "Tern").session().token();

    school.clock.pass(Duration.ofDays(179));
    assertThat(signIn.resume(token)).isPresent();
    school.clock.pass(Duration.ofDays(180));
    assertThat(signIn.resume(token)).isEmpty();
  }

  @Test
  void forgetsASessionThatIsSignedOut() {
    Session session = signIn.signIn("Marlo", School.PASSWORD);

    signIn.signOut(session.token());

    assertThat(signIn.resume(session.token())).isEmpty();
    assertThat(signIn.resume("")).isEmpty();
    assertThat(signIn.resume(session.requestToken())).isEmpty();
  }

  @Test
  void keepsNoTokenThatCouldBeStolenWithTheDatabase() {
    Session session = signIn.signIn("Marlo", School.PASSWORD);

    assertThat(store.ports().sessions().find(session.token())).isEmpty();
    assertThat(store.ports().sessions().find(Secrets.digest(session.token()))).isPresent();
  }

  @Test
  void hashesAnewWhenTheCostHasChanged() {
    Passwords dearer = Passwords.withCost(128, 2);
    String before = hash();

    UseCases.over(store.ports(), dearer, school.clock, school.secrets)
        .signIn()
        .signIn("Marlo", School.PASSWORD);

    assertThat(before).contains("m=64,t=1");
    assertThat(hash()).contains("m=128,t=2");
    assertThat(signIn.signIn("Marlo", School.PASSWORD).caller()).isEqualTo(marlo);
  }

  @Test
  void hashesAsIsAdvised() {
    assertThat(Passwords.argon2id().hash("some password"))
        .startsWith("$argon2id$v=19$m=19456,t=2,p=1$");
  }

  private String hash() {
    return store.ports().instructors().byName("marlo").orElseThrow().passwordHash();
  }
}
