package withy.core.item;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;
import withy.core.Chance;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;

class PassageTest {
  private static final String PORT = "leave-to-port";
  private static final String STARBOARD = "leave-to-starboard";
  private static final String EITHER = "either-side";

  /** Due north, with a corner every hundred metres, each of them before a mark. */
  private static final Way NORTH = way(0, 0, 0, 100, 0, 200, 0, 300);

  private static final Passage THREE =
      passage(
          List.of(PORT, STARBOARD, PORT),
          belief(Misconception.REGION_SWAPPED, STARBOARD, PORT, STARBOARD),
          belief(Misconception.DIRECTION_IGNORED, STARBOARD, PORT, PORT),
          belief(Misconception.JUNCTION_EITHER_SIDE, PORT, STARBOARD, EITHER));

  private static Way way(double... places) {
    Position[] points = new Position[places.length / 2];
    for (int i = 0; i < points.length; i++) {
      points[i] = new Position(places[2 * i], places[2 * i + 1]);
    }
    return new Way(Polyline.of(points), 3);
  }

  private static Passage passage(List<String> key, Passage.Belief... beliefs) {
    return new Passage(
        List.of(leg(0, key.get(0)), leg(1, key.get(1)), leg(2, key.get(2))),
        NORTH,
        List.of(beliefs));
  }

  /** The wrong ways lead off to the east. */
  private static Passage.Leg leg(int mark, String key) {
    double from = 100 * mark;
    List<Option> options =
        List.of(PORT, STARBOARD, EITHER).stream()
            .map(
                side ->
                    side.equals(key)
                        ? option(side, null).sailing(way(0, from, 0, from + 100))
                        : option(side, Misconception.REGION_SWAPPED)
                            .sailing(way(0, from, 50, from + 50)))
            .toList();
    return new Passage.Leg(mark, new Choice(options, key));
  }

  private static Option option(
      String side, @org.jspecify.annotations.Nullable Misconception belief) {
    Message mistook = belief == null ? null : Message.of("mistook." + belief.id());
    return new Option(side, Message.of("option.passage." + side), belief, mistook);
  }

  private static Passage.Belief belief(Misconception belief, String... sides) {
    return new Passage.Belief(List.of(sides), belief, Message.of("mistook." + belief.id()));
  }

  private static String word(String... sides) {
    return String.join("/", sides);
  }

  @Test
  void isRightOnlyWhenEverySideIs() {
    assertThat(THREE.key()).isEqualTo("leave-to-port/leave-to-starboard/leave-to-port");
    assertThat(THREE.grade(THREE.key())).isEqualTo(Grade.RIGHT);
    assertThat(THREE.grade(word(PORT, STARBOARD, STARBOARD)).correct()).isFalse();
  }

  @Test
  void isPutDownToTheBeliefThatExplainsMostOfTheWrongSides() {
    assertThat(THREE.grade(word(STARBOARD, PORT, STARBOARD)).misconception())
        .isEqualTo(Misconception.REGION_SWAPPED);
    assertThat(THREE.grade(word(STARBOARD, PORT, EITHER)).misconception())
        .as("two of three sides")
        .isEqualTo(Misconception.REGION_SWAPPED);
    assertThat(THREE.grade(word(PORT, STARBOARD, EITHER)).misconception())
        .isEqualTo(Misconception.JUNCTION_EITHER_SIDE);
  }

  @Test
  void prefersAmongEqualsTheOneThatWouldNotHaveErredWhereTheAnswerIsRight() {
    assertThat(THREE.grade(word(STARBOARD, PORT, PORT)).misconception())
        .isEqualTo(Misconception.DIRECTION_IGNORED);
  }

  @Test
  void namesNoBeliefForOneHandAtEveryMarkNorForASlip() {
    assertThat(THREE.grade(word(PORT, PORT, PORT))).isEqualTo(Grade.UNEXPLAINED);
    assertThat(THREE.grade(word(PORT, STARBOARD, STARBOARD))).isEqualTo(Grade.UNEXPLAINED);
  }

  @Test
  void leavesUnexplainedToWhichNoBeliefLeads() {
    assertThat(THREE.grade(word(EITHER, EITHER, PORT))).isEqualTo(Grade.UNEXPLAINED);
  }

  @Test
  void knowsWhereBeliefsLeadAndForeseesThem() {
    assertThat(THREE.led(Misconception.DIRECTION_IGNORED)).contains(word(STARBOARD, PORT, PORT));
    assertThat(THREE.led(Misconception.SHAPE_SWAPPED)).isEmpty();
    assertThat(THREE.foreseen()).hasSize(4).startsWith(THREE.key()).allMatch(THREE::accepts);
  }

  @Test
  void sailsAsAnsweredUpToTheFirstWrongSideAndOnFromThere() {
    assertThat(THREE.track(THREE.key())).isEqualTo(NORTH.track());
    assertThat(THREE.track(word(EITHER, STARBOARD, PORT))).isEqualTo(way(0, 0, 50, 50).track());
    assertThat(THREE.track(word(PORT, STARBOARD, STARBOARD)))
        .isEqualTo(way(0, 0, 0, 100, 0, 200, 50, 250).track());
  }

  @Test
  void refusesWhatHasNotOneSideForEachMark() {
    for (String each : List.of("", PORT, word(PORT, PORT), word(PORT, PORT, "keep-clear"))) {
      assertThat(THREE.accepts(each)).isFalse();
      assertThatIllegalArgumentException().isThrownBy(() -> THREE.grade(each));
    }
    assertThat(THREE.accepts(word(PORT, PORT, PORT, PORT))).isFalse();
  }

  @Test
  void keepsTheOrderInWhichTheMarksAreMet() {
    assertThat(THREE.shuffled(Chance.of(1, 1))).isEqualTo(THREE);
  }

  @Test
  void hasNoBeliefThatLeadsToWhatIsRight() {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                passage(
                    List.of(PORT, PORT, PORT),
                    belief(Misconception.REGION_SWAPPED, PORT, PORT, PORT)));
  }

  @Test
  void beginsEveryWayOnTheRightOne() {
    Option right = option(PORT, null).sailing(NORTH);
    Option astray = option(EITHER, Misconception.REGION_SWAPPED).sailing(way(1, 0, 9, 9));
    Passage.Leg stray = new Passage.Leg(1, new Choice(List.of(right, astray), PORT));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Passage(List.of(leg(0, PORT), stray), NORTH, List.of()))
        .withMessageContaining("to which the right track leads");
  }
}
