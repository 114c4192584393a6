package withy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import withy.core.item.Drilled;
import withy.core.item.Form;
import withy.core.mark.Appearance;
import withy.core.mark.MarkDescription;
import withy.core.mark.Practice;
import withy.core.mark.PracticeNote;
import withy.drawing.MarkDrawing;
import withy.wording.Wording;

/** Every mark of every practice is drawn, drilled and explained; run it to see the table. */
class MarksTaughtTest {
  private static final int SEEDS = 6000;
  private static final Wording ENGLISH = Wording.of(Locale.ENGLISH);

  @ParameterizedTest
  @MethodSource("withy.core.mark.Practice#values")
  void isDrawnDrilledAndExplained(Practice practice) {
    Map<String, Set<Form>> drilled = Drilled.forms(practice, SEEDS);
    for (MarkDescription mark : practice.marks()) {
      assertThat(isDrawn(mark)).as("%s drawn", mark.id()).isTrue();
      assertThat(isExplained(mark)).as("%s explained", mark.id()).isTrue();
      assertThat(drilled.get(mark.id())).as("%s drilled", mark.id()).isNotEmpty();
    }
  }

  @ParameterizedTest
  @MethodSource("withy.core.mark.Practice#values")
  void saysInWordsWhatNoMarkShows(Practice practice) {
    for (PracticeNote each : practice.notes()) {
      assertThat(ENGLISH.text(each.messageKey())).isNotBlank();
      assertThat(each.sources()).isNotEmpty();
    }
  }

  /** Writes the table: practice, mark, drawn, forms, explained. */
  public static void main(String[] args) {
    StringBuilder table = new StringBuilder(2048);
    for (Practice practice : Practice.values()) {
      Map<String, Set<Form>> drilled = Drilled.forms(practice, SEEDS);
      for (MarkDescription mark : practice.marks()) {
        table
            .append(practice.id())
            .append('\t')
            .append(mark.id())
            .append('\t')
            .append(isDrawn(mark) ? "drawn" : "-")
            .append('\t')
            .append(drilled.get(mark.id()).stream().map(Form::id).toList())
            .append('\t')
            .append(isExplained(mark) ? "explained" : "-")
            .append('\n');
      }
    }
    System.out.print(table);
  }

  private static boolean isDrawn(MarkDescription mark) {
    return mark.look().appearances(null).stream().allMatch(MarksTaughtTest::isDrawn);
  }

  private static boolean isDrawn(Appearance seen) {
    return MarkDrawing.near(seen, null).text().contains("<path")
        || MarkDrawing.near(seen, null).text().contains("<rect");
  }

  private static boolean isExplained(MarkDescription mark) {
    return !ENGLISH.text(mark.nameKey()).isBlank()
        && !ENGLISH.text(mark.lookKey()).isBlank()
        && !ENGLISH.text(mark.meaningKey()).isBlank()
        && !ENGLISH.name(mark.demand()).isBlank()
        && !ENGLISH.name(mark.passing()).isBlank();
  }
}
