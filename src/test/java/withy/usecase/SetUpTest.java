package withy.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static withy.usecase.Refusals.assertRefused;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import withy.core.mark.Practice;
import withy.store.MemoryStore;
import withy.store.Store;

class SetUpTest {
  private final Store store = MemoryStore.create();
  private final School school = School.over(store.ports());
  private final SetUp setUp = school.cases.setUp();

  @AfterEach
  void close() {
    store.close();
  }

  @Test
  void worksOnceWithTheCodeOfThisStart() {
    assertThat(setUp.needed()).isTrue();
    InstructorAccount first = setUp.setUp(setUp.code(), "Marlo", School.PASSWORD);

    assertThat(setUp.needed()).isFalse();
    assertThat(first.passwordHash()).doesNotContain(School.PASSWORD);
    assertRefused(
        Reason.WRONG_SET_UP_CODE, () -> setUp.setUp(setUp.code(), "Other", School.PASSWORD));
  }

  @Test
  void takesTheCodeHoweverItIsTyped() {
    String typed = setUp.code().toLowerCase(Locale.ROOT).replace("-", " ");

    assertThat(setUp.setUp(typed, "Marlo", School.PASSWORD).name()).isEqualTo("Marlo");
  }

  @Test
  void refusesAnyOtherCode() {
    assertRefused(
        Reason.WRONG_SET_UP_CODE, () -> setUp.setUp("2222-2222-2222", "Marlo", School.PASSWORD));
    String ofAnotherStart = School.over(store.ports()).cases.setUp().code();
    assertRefused(
        Reason.WRONG_SET_UP_CODE, () -> setUp.setUp(ofAnotherStart, "Marlo", School.PASSWORD));
  }

  @Test
  void makesOneInstructorOfManyWhoHaveTheCode() throws Exception {
    List<Object> outcomes =
        AtOnce.call(
            8,
            () -> {
              try {
                return setUp.setUp(setUp.code(), "Marlo", School.PASSWORD);
              } catch (Refused e) {
                return e.reason();
              }
            });

    assertThat(outcomes).filteredOn(Reason.WRONG_SET_UP_CODE::equals).hasSize(7);
  }

  @Test
  void takesOverTheClassesWithoutInstructor() {
    SchoolClass made =
        Founding.found(store.ports().classes(), school.secrets, "Thursday", Practice.IALA_A, null);

    assertThat(school.cases.openClass().of(school.instructor(), made.id()).name())
        .isEqualTo("Thursday");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "seven77", "password", "PassWord1", "12345678", "qwertyuiop"})
  void refusesAPasswordThatIsShortOrTriedFirst(String password) {
    assertRefused(Reason.PASSWORD_UNFIT, () -> setUp.setUp(setUp.code(), "Marlo", password));
    assertThat(setUp.needed()).isTrue();
  }

  @Test
  void takesPasswordsOfEightToTwoHundredCharactersOfAnyScript() {
    String longest = "é⛵".repeat(100);

    assertRefused(Reason.PASSWORD_UNFIT, () -> setUp.setUp(setUp.code(), "Marlo", longest + "x"));
    setUp.setUp(setUp.code(), "Marlo", longest);

    assertThat(school.cases.signIn().signIn("Marlo", longest).caller().name()).isEqualTo("Marlo");
    assertRefused(
        Reason.WRONG_SIGN_IN,
        () -> school.cases.signIn().signIn("Marlo", longest.substring(0, 199)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "   ", "a\u0000b", "a\u202Eb", "a\nb"})
  void refusesANameThatNobodyCanRead(String name) {
    assertRefused(Reason.NAME_UNFIT, () -> setUp.setUp(setUp.code(), name, School.PASSWORD));
  }
}
