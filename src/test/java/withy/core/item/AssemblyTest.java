package withy.core.item;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import withy.core.Chance;
import withy.core.mark.Appearance;
import withy.core.mark.BodyShape;
import withy.core.mark.Colour;
import withy.core.mark.Topmark;
import withy.core.mark.TopmarkShape;
import withy.fixture.FreeItems;

class AssemblyTest {
  private static final Assembly MARK = FreeItems.PORT_HAND;
  private static final Message MISTOOK = Message.of("mistook.unexplained");

  @ParameterizedTest
  @CsvSource({
    "can, plain-red, can, Fl_R_2.5s, ",
    "can, plain-green, can, Fl_G_2.5s, REGION_SWAPPED",
    "can, plain-green, can, Fl_R_2.5s, REGION_SWAPPED",
    "conical, plain-green, can, Fl_G_2.5s, REGION_SWAPPED",
    "conical, plain-green, cone-up, Fl_R_2.5s, SHAPE_SWAPPED",
    "conical, plain-red, cone-up, Fl_R_2.5s, SHAPE_SWAPPED",
    "can, plain-red, none, Fl_R_2.5s, UNEXPLAINED",
    "spherical, plain-red, none, Fl_R_2.5s, UNEXPLAINED",
  })
  void putsWrongPartsDownToTheBeliefThatExplainsMostOfThem(
      String body, String colours, String topmark, String light, Misconception belief) {
    Grade grade = MARK.grade(MARK.word(FreeItems.parts(body, colours, topmark, light)));
    assertThat(grade.misconception()).isEqualTo(belief);
    assertThat(grade.correct()).isEqualTo(belief == null);
  }

  @Test
  void isRightOnlyWithEveryPart() {
    int right = 0;
    for (Map<Feature, String> each : all()) {
      String word = MARK.word(each);
      Grade grade = MARK.grade(word);
      right += grade.correct() ? 1 : 0;
      assertThat(grade.correct()).isEqualTo(MARK.wrong(word).isEmpty());
      assertThat(grade.correct()).isEqualTo(word.equals(MARK.key()));
      assertThat(MARK.accepts(word)).isTrue();
      assertThat(word).doesNotContain(" ", "=");
    }
    assertThat(right).isOne();
  }

  @Test
  void amongBeliefsThatExplainAsMuchNamesTheOneThatIsContradictedLeast() {
    Assembly.Belief broad =
        new Assembly.Belief(
            FreeItems.parts("conical", "plain-green", "cone-up", "Fl_G_2.5s"),
            Misconception.REGION_SWAPPED,
            MISTOOK);
    Assembly.Belief narrow =
        new Assembly.Belief(only(Feature.BODY, "conical"), Misconception.SHAPE_SWAPPED, MISTOOK);
    Assembly mark = new Assembly(MARK.slots(), MARK.parts(), List.of(broad, narrow));
    String given = mark.word(FreeItems.parts("conical", "plain-red", "can", "Fl_R_2.5s"));
    assertThat(mark.grade(given).misconception()).isEqualTo(Misconception.SHAPE_SWAPPED);
  }

  @Test
  void tellsTheWrongPartsFromTheRightOnes() {
    String given = MARK.word(FreeItems.parts("conical", "plain-red", "can", "Fl_G_2.5s"));
    assertThat(MARK.wrong(given).keySet()).containsExactly(Feature.BODY, Feature.LIGHT);
    assertThat(given).isEqualTo("conical/plain-red/can/Fl_G_2.5s");
  }

  @Test
  void showsWhatThePartsLookLikeTogether() {
    String given = MARK.word(FreeItems.parts("conical", "plain-green", "none", "Fl_R_2.5s"));
    Appearance mark = MARK.appearance(given).orElseThrow();
    assertThat(mark.body()).isEqualTo(BodyShape.CONICAL);
    assertThat(mark.colours()).containsExactly(Colour.GREEN);
    assertThat(mark.topmark()).isNull();
    assertThat(mark.light()).isNotNull();
    assertThat(mark.light().shortNotation()).isEqualTo("Fl R 2.5s");
  }

  @Test
  void aTopmarkOfNoColourTakesThatOfTheBody() {
    String given = MARK.word(FreeItems.parts("can", "plain-green", "cone-up", "Fl_R_2.5s"));
    assertThat(MARK.appearance(given).orElseThrow().topmark())
        .isEqualTo(Topmark.of(TopmarkShape.CONE_UP, Colour.GREEN));
  }

  @Test
  void beliefsLeadToTheirPartsAndLeaveTheOthersRight() {
    assertThat(MARK.led(Misconception.SHAPE_SWAPPED))
        .hasValue("conical/plain-red/cone-up/Fl_R_2.5s");
    assertThat(MARK.led(Misconception.DIRECTION_IGNORED)).isEmpty();
    assertThat(MARK.foreseen()).hasSize(3).startsWith(MARK.key()).allMatch(MARK::accepts);
  }

  @Test
  void shufflingChangesTheOrderAndNothingElse() {
    Assembly shuffled = MARK.shuffled(Chance.of(7, 0));
    assertThat(shuffled).isNotEqualTo(MARK);
    assertThat(shuffled.key()).isEqualTo(MARK.key());
    for (int i = 0; i < MARK.slots().size(); i++) {
      assertThat(shuffled.slots().get(i).parts())
          .containsExactlyInAnyOrderElementsOf(MARK.slots().get(i).parts());
    }
  }

  @Test
  void refusesWhatIsNoAnswer() {
    Map<Feature, String> three = new LinkedHashMap<>(MARK.parts());
    three.remove(Feature.LIGHT);
    assertThatIllegalArgumentException().isThrownBy(() -> MARK.word(three));
    assertThatIllegalArgumentException().isThrownBy(() -> MARK.grade("can/plain-red/can"));
    assertThat(MARK.accepts("can/plain-red/can/none")).isFalse();
    assertThat(MARK.accepts("")).isFalse();
  }

  @Test
  void refusesBeliefsThatLeadToWhatIsRightOrToNothing() {
    refuses(only(Feature.BODY, "can"));
    refuses(MARK.parts());
    refuses(new LinkedHashMap<>());
    refuses(only(Feature.BODY, "pillar"));
  }

  @Test
  void refusesAKeyThatLeavesASlotOpen() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Assembly(MARK.slots(), only(Feature.BODY, "can"), List.of()));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Part("a/b", MISTOOK, null))
        .withMessageContaining("a/b");
  }

  private static void refuses(Map<Feature, String> parts) {
    Assembly.Belief belief = new Assembly.Belief(parts, Misconception.REGION_SWAPPED, MISTOOK);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Assembly(MARK.slots(), MARK.parts(), List.of(belief)));
  }

  private static Map<Feature, String> only(Feature feature, String value) {
    Map<Feature, String> parts = new LinkedHashMap<>();
    parts.put(feature, value);
    return parts;
  }

  private static List<Map<Feature, String>> all() {
    List<Map<Feature, String>> all = new ArrayList<>(List.of(new LinkedHashMap<>()));
    for (Slot slot : MARK.slots()) {
      List<Map<Feature, String>> longer = new ArrayList<>();
      for (Map<Feature, String> begun : all) {
        for (Part part : slot.parts()) {
          Map<Feature, String> more = new LinkedHashMap<>(begun);
          more.put(slot.feature(), part.value());
          longer.add(more);
        }
      }
      all = longer;
    }
    return all;
  }
}
