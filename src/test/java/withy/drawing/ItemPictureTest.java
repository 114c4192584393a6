package withy.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import withy.core.geometry.Bearing;
import withy.core.item.Composition;
import withy.core.item.Form;
import withy.core.item.Item;
import withy.core.item.ItemGenerator;
import withy.core.item.Option;
import withy.core.mark.MarkKind;
import withy.core.mark.Practice;
import withy.core.scenario.Scenario;
import withy.core.scenario.SightedMark;

class ItemPictureTest {
  private static final Composition ALL = new Composition(List.of(), List.of(), null, 60);
  private static final long SEED = 20;

  @ParameterizedTest
  @MethodSource("withy.core.mark.Practice#values")
  void drawsEveryItemBeforeAndAfterAnyAnswer(Practice practice) {
    for (Item item : items(practice)) {
      well(item, ItemPicture.question(item));
      well(item, ItemPicture.answered(item, null));
      for (Option each : item.options()) {
        well(item, ItemPicture.answered(item, each.value()));
      }
    }
  }

  private static boolean isChart(Item item) {
    return ChartedQuestion.isAsked(item.form()) || item.form() == Form.PASSAGE;
  }

  /** A picture fits into a few packets; one with six marks on their structures takes more. */
  private static void well(Item item, ItemPicture picture) {
    int most =
        isChart(item) || item.scenario().sailing() != null
            ? 60
            : item.scenario().marks().size() > 2 ? 20 : 12;
    for (Svg each : both(picture)) {
      assertThat(Pictures.parsed(each).getDocumentElement().getTagName()).isEqualTo("svg");
      assertThat(each.text().getBytes(StandardCharsets.UTF_8).length).isLessThan(most * 1024);
      assertThat(each.text()).doesNotContain("NaN", "Infinity", " id=", " style=", " class=");
    }
  }

  @ParameterizedTest
  @MethodSource("withy.core.mark.Practice#values")
  void writesOnlyFiguresLettersOfTheChartAndTheLabelIntoAQuestion(Practice practice) {
    for (Item item : items(practice)) {
      if (isChart(item)) {
        continue; // a chart has soundings, lights and numbers by its nature
      }
      List<SightedMark> marks = item.scenario().marks();
      String label = marks.isEmpty() ? null : marks.get(0).label();
      for (Svg each : both(ItemPicture.question(item))) {
        assertThat(texts(each))
            .allMatch(w -> w.matches("[0-9.]+(m|ft)?|[NESWRGs?]") || w.equals(label));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("withy.core.mark.Practice#values")
  void givesAllPlansOfAFormTheSamePaper(Practice practice) {
    Set<String> roots = new LinkedHashSet<>();
    for (Item item : items(practice)) {
      Svg plan = ItemPicture.question(item).plan();
      if (plan != null) {
        roots.add(plan.text().substring(0, plan.text().indexOf('>')));
      }
    }
    assertThat(roots).hasSizeLessThanOrEqualTo(1);
  }

  /** The plan must not say more of the mark than where it stands. */
  @Test
  void drawsTheSamePlanForEveryKindInTheSameSituation() {
    for (Item item : items(Practice.CANADA)) {
      if (item.form() == Form.SIDE) {
        Svg plan = ItemPicture.question(item).plan();
        assertThat(plan).isNotNull();
        SightedMark shown = item.scenario().mark();
        SightedMark other =
            new SightedMark(
                MarkKind.SAFE_WATER,
                shown.bearing(),
                shown.distance(),
                null,
                Pictures.looks(Practice.CANADA, MarkKind.SAFE_WATER).get(0));
        assertThat(
                PassingPlan.of(item.scenario().situation(), other, null, null, Lettering.ENGLISH))
            .isEqualTo(plan);
      }
    }
  }

  @Test
  void drawsADashedWayForAWrongAnswerAndNoneForTheKey() {
    int seen = 0;
    for (Item item : items(Practice.IALA_B)) {
      Svg right = ItemPicture.answered(item, item.key()).plan();
      if (right != null && item.form() == Form.SIDE && item.key().startsWith("leave")) {
        seen++;
        assertThat(right.text()).doesNotContain("stroke-dasharray=\"6 4\"");
        Svg wrong = ItemPicture.answered(item, wrong(item)).plan();
        assertThat(wrong).isNotEqualTo(right);
      }
    }
    assertThat(seen).isPositive();
  }

  @Test
  void leavesAMarkOnTheSideThatTheKeySays() {
    Vec boat = new Vec(0, 100);
    Vec mark = new Vec(0, 0);
    Bearing north = Bearing.NORTH;
    List<Vec> toPort = Passing.of("leave-to-port", boat, mark, north).ways().get(0);
    List<Vec> toStarboard = Passing.of("leave-to-starboard", boat, mark, north).ways().get(0);
    assertThat(toPort.get(1).x()).as("a mark to port lies left of the way").isPositive();
    assertThat(toStarboard.get(1).x()).isNegative();
    List<Vec> east = Passing.of("pass-east", boat, mark, north).ways().get(0);
    assertThat(east.get(1).x()).isPositive();
    assertThat(Passing.of("either-side", boat, mark, north).ways()).hasSize(2);
  }

  /**
   * The mark or the pair that is asked about stands first in the scenario, never in the picture.
   */
  @ParameterizedTest
  @MethodSource("withy.core.mark.Practice#values")
  void drawsSeveralLightsOrLeadsAlikeWhicheverIsAskedAbout(Practice practice) {
    Composition several = new Composition(List.of(), List.of(Form.LIGHT, Form.LEADING), null, 1);
    int compared = 0;
    for (int seed = 0; seed < 300; seed++) {
      Item item = ItemGenerator.item(practice, several, seed, 0);
      int together = item.form() == Form.LEADING ? 2 : 1;
      if (item.scenario().marks().size() > 2) {
        assertThat(ItemPicture.question(rotated(item, together)).view().text())
            .isEqualTo(ItemPicture.question(item).view().text());
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(30);
  }

  /** The same marks in sight, another one first. */
  private static Item rotated(Item item, int marks) {
    List<SightedMark> others = new ArrayList<>(item.scenario().marks());
    Collections.rotate(others, marks);
    Scenario scenario = item.scenario();
    return new Item(
        item.form(),
        item.seed(),
        item.index(),
        item.concepts(),
        new Scenario(scenario.practice(), scenario.situation(), others).asking(scenario.question()),
        item.prompt(),
        item.answer(),
        item.explanation());
  }

  private static String wrong(Item item) {
    for (Option each : item.options()) {
      if (!each.value().equals(item.key())) {
        return each.value();
      }
    }
    throw new AssertionError("an item has a wrong option");
  }

  private static List<Item> items(Practice practice) {
    List<Item> items = new ArrayList<>();
    for (int i = 0; i < 30; i++) {
      items.add(ItemGenerator.item(practice, ALL, SEED, i));
    }
    return items;
  }

  private static List<Svg> both(ItemPicture picture) {
    Svg plan = picture.plan();
    return plan == null ? List.of(picture.view()) : List.of(picture.view(), plan);
  }

  private static List<String> texts(Svg svg) {
    return Pictures.elements(svg).stream()
        .filter(each -> each.getTagName().equals("text"))
        .map(Element::getTextContent)
        .toList();
  }
}
