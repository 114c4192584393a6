package withy.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.StringLength;
import net.jqwik.api.lifecycle.AfterContainer;
import withy.core.mark.Practice;
import withy.store.MemoryStore;
import withy.store.Store;

class NamesTest {
  private static final Store STORE = MemoryStore.create();
  private static final School SCHOOL = School.over(STORE.ports());
  private static final InstructorCaller MARLO = SCHOOL.instructor();

  @AfterContainer
  static void close() {
    STORE.close();
  }

  @Property(tries = 200)
  void nothingTypedIsEverTakenForACommandOfTheDatabase(
      @ForAll
          @Chars({'\'', '"', '\\', ';', '-', '%', '_', ':', '?', '<', '>', 'a', 'é', ' '})
          @StringLength(min = 1, max = 20)
          String typed) {
    String name = "x" + typed.strip();

    SchoolClass opened = SCHOOL.cases.openClass().open(MARLO, name, Practice.USA);

    SchoolClass found = SCHOOL.cases.openClass().of(MARLO, opened.id());
    assertThat(found).isEqualTo(opened);
    assertThat(found.name()).isEqualTo(name.replaceAll(" +", " "));
  }

  @Property(tries = 1000)
  void aNicknameIsKeptAsItIsShownOrRefused(@ForAll @StringLength(max = 30) String typed) {
    try {
      String kept = Names.nickname(typed);
      assertThat(Names.nickname(kept)).isEqualTo(kept);
      assertThat(kept.codePointCount(0, kept.length())).isBetween(1, Names.LONGEST_NICKNAME);
      assertThat(kept).doesNotContainPattern("[\\p{C}\\p{Zl}\\p{Zp}<>&\"\\\\]");
      assertThat(Names.folded(kept)).hasSizeLessThanOrEqualTo(96);
    } catch (Refused e) {
      assertThat(e.reason()).isEqualTo(Reason.NICKNAME_UNFIT);
    }
  }
}
