package withy.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static withy.usecase.Refusals.assertRefused;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import withy.store.MemoryStore;
import withy.store.Store;

class JoinClassTest {
  private final Store store = MemoryStore.create();
  private final School school = School.over(store.ports());
  private final SchoolClass tuesday = school.schoolClass();
  private final JoinClass joinClass = school.cases.joinClass();

  @AfterEach
  void close() {
    store.close();
  }

  @Test
  void takesTheCodeHoweverItIsTyped() {
    String code = tuesday.code();
    assertThat(code).hasSize(6).matches("[23456789A-HJKMNP-TV-Z]+");

    joinClass.join(code.toLowerCase(Locale.ROOT), "Tern");
    joinClass.join(" " + code.substring(0, 3) + "-" + code.substring(3) + "\t", "Skua");
    joinClass.join(code.replace("", "\u2013"), "Wren");

    assertThat(store.ports().learners().of(tuesday.id())).hasSize(3);
    assertRefused(Reason.UNKNOWN_CODE, () -> joinClass.join("222222", "Knot"));
    assertRefused(Reason.UNKNOWN_CODE, () -> joinClass.join("", "Knot"));
    assertRefused(Reason.UNKNOWN_CODE, () -> joinClass.join("' OR ''='", "Knot"));
  }

  @Test
  void letsTheLearnerBackInWithACodeOfItsOwn() {
    JoinClass.Joined joined = joinClass.join(tuesday.code(), "Tern");
    assertThat(joined.returnCode())
        .matches("([23456789A-HJKMNP-TV-Z]{4}-){2}[2-9A-HJKMNP-TV-Z]{4}");

    Session back =
        joinClass.comeBack(joined.returnCode().toLowerCase(Locale.ROOT).replace('-', ' '));

    assertThat(back.caller()).isEqualTo(joined.session().caller());
    assertThat(back.token()).isNotEqualTo(joined.session().token());
    assertRefused(Reason.UNKNOWN_CODE, () -> joinClass.comeBack(tuesday.code()));
    assertThat(joined.toString()).doesNotContain(joined.returnCode());
  }

  @ParameterizedTest
  @ValueSource(strings = {"tern", "TERN", " Tern ", "Ｔern"})
  void refusesANicknameThatSomebodyHas(String same) {
    joinClass.join(tuesday.code(), "Tern");

    assertRefused(Reason.NICKNAME_TAKEN, () -> joinClass.join(tuesday.code(), same));
    joinClass.join(school.schoolClass().code(), same);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "-tern",
        "=1+1",
        "@tern",
        "'tern",
        "a\u0000b",
        "a\u202Eb",
        "a\u200Bb",
        "a\nb",
        "a<b>",
        "a\"b",
        "a\\b",
        "a,b",
        "abcdefghijklmnopqrstuvwxy",
        "⛵"
      })
  void refusesANicknameThatCannotBe(String nickname) {
    assertRefused(Reason.NICKNAME_UNFIT, () -> joinClass.join(tuesday.code(), nickname));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Ö",
        "Åse Ö.",
        "O'Tern",
        "Anne-Lou 2",
        "李",
        "نورس",
        "abcdefghijklmnopqrstuvwx",
        "7"
      })
  void takesNicknamesOfAnyScript(String nickname) {
    assertThat(joinClass.join(tuesday.code(), nickname).learner().nickname()).isEqualTo(nickname);
  }

  @Test
  void takesAComposedAndADecomposedLetterForTheSame() {
    assertThat(joinClass.join(tuesday.code(), "E\u0301ider").learner().nickname())
        .isEqualTo("\u00C9ider");
    assertRefused(Reason.NICKNAME_TAKEN, () -> joinClass.join(tuesday.code(), "e\u0301ider"));
  }

  @Test
  void takesSixtyLearnersAndNoMoreEvenIfTheyComeAtOnce() throws Exception {
    for (int i = 0; i < JoinClass.MOST_LEARNERS - 5; i++) {
      joinClass.join(tuesday.code(), "Learner " + i);
    }

    List<String> outcomes =
        AtOnce.call(
            20,
            () -> {
              try {
                joinClass.join(tuesday.code(), "Late " + school.secrets.code(6));
                return "joined";
              } catch (Refused e) {
                return e.reason().name();
              }
            });

    assertThat(outcomes).filteredOn("joined"::equals).hasSize(5);
    assertThat(outcomes).filteredOn("CLASS_FULL"::equals).hasSize(15);
  }

  @Test
  void givesANicknameToOneOfManyWhoWantIt() throws Exception {
    List<String> outcomes =
        AtOnce.call(
            20,
            () -> {
              try {
                return joinClass.join(tuesday.code(), "Tern").learner().nickname();
              } catch (Refused e) {
                return e.reason().name();
              }
            });

    assertThat(outcomes).filteredOn("Tern"::equals).hasSize(1);
    assertThat(outcomes).filteredOn("NICKNAME_TAKEN"::equals).hasSize(19);
  }
}
