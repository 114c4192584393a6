package withy.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import withy.core.item.Composition;
import withy.core.item.Form;
import withy.core.item.Item;
import withy.core.item.ItemGenerator;
import withy.core.mark.Practice;
import withy.core.mark.Travel;
import withy.core.scenario.Scenario;
import withy.fixture.Channels;
import withy.fixture.Leads;

/** The plans of numbered channels, and the views and plans of leading marks. */
class LinesAndNumbersTest {
  @Test
  void hidesOneNumberAndShowsItAfterTheAnswer() {
    Scenario channel = Channels.of(Practice.IALA_A, Travel.WITH, "green 5 + red ?, red 8");
    assertThat(texts(ChannelPlan.of(channel, null, Lettering.ENGLISH)))
        .containsExactlyInAnyOrder("N", "E", "S", "W", "5", "?", "8");
    assertThat(texts(ChannelPlan.of(channel, "6", Lettering.ENGLISH)))
        .containsExactlyInAnyOrder("N", "E", "S", "W", "5", "6", "8");
  }

  /** The buoyage runs north, so that port-hand marks stand to the west both ways. */
  @Test
  void drawsEveryMarkOnItsHandAndInItsOrder() {
    for (Travel travel : List.of(Travel.WITH, Travel.AGAINST)) {
      Scenario channel = Channels.of(Practice.IALA_A, travel, "green 5 + red ?, red 8");
      Svg plan = ChannelPlan.of(channel, "6", Lettering.ENGLISH);
      assertThat(at(plan, "6", "x")).isLessThan(at(plan, "5", "x"));
      assertThat(at(plan, "8", "y")).isLessThan(at(plan, "6", "y"));
    }
  }

  @Test
  void setsSeveralPairsSideBySideUnderTheirBearings() {
    Svg day = LeadingScene.of(Leads.ahead(Practice.USA, 0, 2, -2));
    assertThat(texts(day)).containsExactly("349", "016", "040");
    Svg night = LeadingScene.of(Leads.atNight(Practice.USA, 0, 2, -2));
    assertThat(texts(night)).containsExactly("349", "016", "040");
  }

  @Test
  void writesNothingBesideAPairThatStandsAlone() {
    assertThat(texts(LeadingScene.of(Leads.ahead(Practice.CANADA, -2)))).isEmpty();
    assertThat(texts(LeadingScene.of(Leads.astern(Practice.CANADA, -2)))).isEmpty();
    assertThat(texts(LeadingScene.of(Leads.atNight(Practice.CANADA, -2)))).isEmpty();
  }

  @Test
  void showsThePlanOfALeadingLineOnlyAfterTheAnswer() {
    Composition leading = new Composition(List.of(), List.of(Form.LEADING), null, 10);
    for (int seed = 0; seed < 20; seed++) {
      Item item = ItemGenerator.item(Practice.IALA_B, leading, seed, 0);
      assertThat(ItemPicture.question(item).plan()).isNull();
      Svg right = ItemPicture.answered(item, item.key()).plan();
      assertThat(right).isNotNull();
      assertThat(right.text()).doesNotContain("stroke-dasharray=\"6 4\"");
      for (String wrong : List.of("steer-port", "steer-starboard", "on-the-line")) {
        Svg plan = ItemPicture.answered(item, wrong).plan();
        assertThat(plan).isNotNull();
        assertThat(plan.text().contains("stroke-dasharray=\"6 4\""))
            .isEqualTo(!wrong.equals(item.key()));
      }
    }
  }

  private static double at(Svg svg, String words, String axis) {
    return Pictures.elements(svg).stream()
        .filter(each -> each.getTextContent().equals(words) && each.getTagName().equals("text"))
        .mapToDouble(each -> Double.parseDouble(each.getAttribute(axis)))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> texts(Svg svg) {
    return Pictures.elements(svg).stream()
        .filter(each -> each.getTagName().equals("text"))
        .map(Element::getTextContent)
        .toList();
  }
}
