package withy.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import withy.core.light.LightCharacter;
import withy.core.light.LightTimeline;
import withy.core.mark.Taper;

class LeadingViewTest {
  private static final LightTimeline FRONT = LightCharacter.parse("Q R").timeline();
  private static final LightTimeline REAR = LightCharacter.parse("Iso R 6s").timeline();

  @Test
  void standsTheFrontMarkUnderTheRearOneWhereTheyAreInLine() {
    List<Vec> feet = feet(0);
    assertThat(feet.get(0).x()).isEqualTo(feet.get(1).x());
    assertThat(feet.get(1).y()).isGreaterThan(feet.get(0).y() + 30);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-4, -1, -0.4, 0.4, 1, 4})
  void setsTheFrontMarkAsideByTheSeparation(double separation) {
    List<Vec> feet = feet(separation);
    double aside = feet.get(1).x() - feet.get(0).x();
    assertThat(aside).isCloseTo(separation * 26, within(0.05));
    List<Vec> lights = lights(separation);
    assertThat(lights.get(1).x() - lights.get(0).x()).isCloseTo(aside, within(0.2));
    assertThat(lights.get(1).y()).isGreaterThan(lights.get(0).y());
  }

  /** A leading item calls them off the line beyond one degree: that shows at once. */
  @Test
  void showsADegreeAsMoreThanHalfABoard() {
    List<Vec> feet = feet(1);
    double board = new BoardDrawing(Specimens.leading(Taper.UP), 0).outline().widthAt(-1);
    assertThat(feet.get(1).x() - feet.get(0).x()).isGreaterThan(board * 0.47 / 2);
  }

  @Test
  void keepsBothMarksInSightHoweverFarApart() {
    for (double each : new double[] {-90, 90}) {
      assertThat(feet(each)).allMatch(foot -> foot.x() > 60 && foot.x() < 260);
      assertThat(lights(each)).allMatch(foot -> foot.x() > 60 && foot.x() < 260);
    }
  }

  /** Only the deck goes on below the lower edge. */
  @Test
  void staysOnThePaper() {
    for (Svg view : List.of(day(-5, true), day(5, false), day(0, true))) {
      for (Rectangle2D box : Extent.ofPaths(view)) {
        assertThat(box.getMinX()).isGreaterThanOrEqualTo(0);
        assertThat(box.getMaxX()).isLessThanOrEqualTo(320);
        assertThat(box.getMinY()).isGreaterThan(6);
        assertThat(box.getMaxY()).isLessThanOrEqualTo(282);
      }
      assertThat(view.text().length()).isLessThan(12 * 1024);
    }
  }

  @Test
  void tellsAheadFromAsternByTheDeck() {
    assertThat(day(1, false)).isNotEqualTo(day(1, true));
    assertThat(LeadingView.night(FRONT, REAR, 1, false))
        .isNotEqualTo(LeadingView.night(FRONT, REAR, 1, true));
  }

  @Test
  void writesNothing() {
    assertThat(day(1, false).text()).doesNotContain("<text");
    assertThat(LeadingView.night(FRONT, REAR, 1, true).text()).doesNotContain("<text");
  }

  private static Svg day(double separation, boolean astern) {
    return LeadingView.day(
        Specimens.leading(Taper.UP), Specimens.leading(Taper.DOWN), separation, astern);
  }

  /** The feet of the rear and the front mark. */
  private static List<Vec> feet(double separation) {
    return Pictures.elements(day(separation, false)).stream()
        .map(each -> each.getAttribute("transform"))
        .filter(each -> each.startsWith("translate("))
        .map(each -> each.substring(10, each.indexOf(')')).split(" ", -1))
        .map(each -> new Vec(Double.parseDouble(each[0]), Double.parseDouble(each[1])))
        .toList();
  }

  /** The rear and the front light in units of the whole picture. */
  private static List<Vec> lights(double separation) {
    return Pictures.elements(LeadingView.night(FRONT, REAR, separation, false)).stream()
        .filter(each -> each.getAttribute("overflow").equals("visible"))
        .map(each -> new Vec(share(each, "x") * 320, share(each, "y") * 280))
        .toList();
  }

  private static double share(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute).replace("%", "")) / 100;
  }
}
