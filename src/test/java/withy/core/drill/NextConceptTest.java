package withy.core.drill;

import static org.assertj.core.api.Assertions.assertThat;
import static withy.core.drill.NextConcept.Why.BELIEF;
import static withy.core.drill.NextConcept.Why.KEPT_UP;
import static withy.core.drill.NextConcept.Why.NEW;
import static withy.core.drill.NextConcept.Why.UNKNOWN;
import static withy.core.drill.NextConcept.Why.UNSETTLED;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import withy.core.Chance;
import withy.core.measurement.LearnerState;

class NextConceptTest {
  private static final Standing KNOWN = standing("known", 5, 0.98, 0.01, 0.005);
  private static final Standing SURE = standing("sure", 9, 0.996, 0.002, 0.001);
  private static final Standing OPEN = standing("open", 2, 0.55, 0.30, 0.10);
  private static final Standing FRESH = standing("fresh", 0, 0.70, 0.10, 0.10);
  private static final Standing WRONG = standing("wrong", 4, 0.01, 0.50, 0.49);
  private static final Standing CLEAR = standing("clear", 4, 0.005, 0.99, 0.003);

  @Test
  void asksWhatIsLeastSettledAndSaysWhy() {
    assertThat(next(List.of(KNOWN, OPEN, CLEAR))).isEqualTo(new NextConcept("open", UNSETTLED));
    assertThat(next(List.of(KNOWN, FRESH, CLEAR))).isEqualTo(new NextConcept("fresh", NEW));
    assertThat(next(List.of(KNOWN, WRONG, CLEAR))).isEqualTo(new NextConcept("wrong", BELIEF));
    assertThat(next(List.of(SURE, CLEAR))).isEqualTo(new NextConcept("clear", UNKNOWN));
    assertThat(next(List.of(SURE))).isEqualTo(new NextConcept("sure", KEPT_UP));
  }

  @Test
  void leavesTwoItemsBetweenThoseOfOneConcept() {
    List<Standing> four = List.of(KNOWN, OPEN, WRONG, CLEAR);
    List<String> asked = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      asked.add(NextConcept.leastSettled(four, asked, Chance.of(1, i)).concept());
    }
    for (int i = 2; i < asked.size(); i++) {
      assertThat(asked.subList(i - 2, i)).doesNotContain(asked.get(i));
    }
  }

  @Test
  void shrinksTheGapToWhatFewConceptsAllow() {
    List<String> asked = List.of("open", "known");
    assertThat(NextConcept.leastSettled(List.of(OPEN, KNOWN), asked, Chance.of(1, 0)).concept())
        .isEqualTo("open");
    assertThat(NextConcept.leastSettled(List.of(OPEN), List.of("open"), Chance.of(1, 0)).concept())
        .isEqualTo("open");
  }

  @Test
  void takesAnyOfEquals() {
    List<Standing> equals =
        List.of(
            standing("a", 0, .7, .1, .1),
            standing("b", 0, .7, .1, .1),
            standing("c", 0, .7, .1, .1));
    TreeSet<String> taken = new TreeSet<>();
    for (int i = 0; i < 30; i++) {
      taken.add(NextConcept.leastSettled(equals, List.of(), Chance.of(9, i)).concept());
    }
    assertThat(taken).containsExactly("a", "b", "c");
  }

  private static NextConcept next(List<Standing> standings) {
    return NextConcept.leastSettled(standings, List.of(), Chance.of(1, 1));
  }

  private static Standing standing(
      String concept, int answers, double knows, double first, double second) {
    TreeMap<String, Double> beliefs = new TreeMap<>();
    beliefs.put("first", first);
    beliefs.put("second", second);
    double guesses = Math.max(0, 1 - knows - first - second);
    LearnerState state = new LearnerState("Ada", concept, answers, knows, beliefs, guesses);
    return new Standing(state);
  }
}
