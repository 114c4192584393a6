package withy.core.item;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.assertj.core.data.Offset;
import withy.exchange.ItemJson;
import withy.wording.ItemWording;
import withy.wording.Wording;

/**
 * What must hold of items about lights ashore, worked out anew from the JSON alone: Allard's law by
 * halving, sectors by counting degrees, the sides of a fairway on a plane.
 */
final class LookoutTruth {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final ItemWording WORDS = new ItemWording(Wording.of(Locale.ENGLISH));

  /** Rounded to a tenth; the last digit of a tie may fall either way. */
  private static final Offset<Double> TENTH = within(0.0500001);

  private final JsonNode line;
  private final JsonNode situation;
  private final JsonNode light;

  private LookoutTruth(JsonNode line) {
    this.line = line;
    this.situation = line.get("situation");
    this.light = situation.get("light");
  }

  static void holdsOf(Item item) {
    try {
      new LookoutTruth(JSON.readTree(ItemJson.line(item, WORDS))).holds();
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void holds() {
    assertThat(line.get("marks")).isEmpty();
    switch (situation.get("asked").textValue()) {
      case "geographic-range" -> miles(geographic(), geographicBeliefs());
      case "seen-from" -> seenFrom();
      case "sector-bearing" -> seen(number(situation, "lightBearing"));
      case "sector-bow" -> {
        double bow = number(situation, "heading") + number(situation, "relativeBearing");
        assertThat(turned(bow)).isEqualTo(number(situation, "lightBearing"));
        seen(turned(bow));
      }
      case "sector-fairway" -> fairway();
      case "sector-limit" -> limit();
      default -> throw new AssertionError(situation);
    }
  }

  private double geographic() {
    return horizon(number(light, "elevation")) + horizon(number(situation, "eyeHeight"));
  }

  private double horizon(double height) {
    boolean feet = situation.get("heightUnit").textValue().equals("ft");
    return (feet ? 1.17 : 2.07) * StrictMath.pow(height, 0.5);
  }

  private Map<String, Double> geographicBeliefs() {
    boolean feet = situation.get("heightUnit").textValue().equals("ft");
    double light = number(this.light, "elevation");
    Map<String, Double> beliefs = new LinkedHashMap<>();
    beliefs.put("nominal-is-visible", number(this.light, "nominalRange"));
    beliefs.put("eye-height-ignored", horizon(light));
    beliefs.put("heights-added-first", horizon(light + number(situation, "eyeHeight")));
    beliefs.put("height-unit-mixed", geographic() * (feet ? 2.07 / 1.17 : 1.17 / 2.07));
    return beliefs;
  }

  private void seenFrom() {
    double nominal = number(light, "nominalRange");
    double visibility = number(situation, "visibility");
    double luminous = luminous(nominal, visibility);
    double geographic = geographic();
    Map<String, Double> beliefs = new LinkedHashMap<>();
    beliefs.put("nominal-is-visible", nominal);
    beliefs.put(
        "eye-height-ignored", StrictMath.min(horizon(number(light, "elevation")), luminous));
    beliefs.put("visibility-ignored", StrictMath.min(geographic, nominal));
    beliefs.put("horizon-ignored", luminous);
    beliefs.put("power-ignored", geographic);
    miles(StrictMath.min(geographic, luminous), beliefs);
    boolean listed = false;
    for (JsonNode each : situation.get("luminousRanges")) {
      listed |= number(each, "nominalRange") == nominal;
      assertThat(number(each, "luminousRange"))
          .isCloseTo(luminous(number(each, "nominalRange"), visibility), TENTH);
    }
    assertThat(listed).as("the table has a line for the light").isTrue();
  }

  /** Ln of Allard's law for both visibilities, in which constant and threshold cancel. */
  private static double luminous(double nominal, double visibility) {
    double wanted = 2 * StrictMath.log(nominal) + nominal * StrictMath.log(20) / 10;
    double low = 0.001;
    double high = 200;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      double got = 2 * StrictMath.log(middle) + middle * StrictMath.log(20) / visibility;
      if (got < wanted) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private void miles(double truth, Map<String, Double> beliefs) {
    JsonNode answer = line.get("answer");
    assertThat(answer.get("unit").textValue()).isEqualTo("M");
    double value = number(answer, "value");
    double tolerance = number(answer, "tolerance");
    assertThat(value).as("%s", line).isCloseTo(truth, TENTH);
    assertThat(tolerance).isBetween(StrictMath.max(0.1, value * 0.0299), value * 0.03 + 0.1);
    assertThat(line.get("prompt").textValue()).contains("up to " + answer.get("tolerance"));
    assertThat(answer.get("beliefs")).hasSizeGreaterThanOrEqualTo(2);
    for (JsonNode each : answer.get("beliefs")) {
      String belief = each.get("misconception").textValue();
      assertThat(number(each, "value"))
          .as("%s of %s", belief, line)
          .isCloseTo(beliefs.get(belief), TENTH);
      assertThat(StrictMath.abs(number(each, "value") - value)).isGreaterThan(tolerance - 1e-9);
    }
  }

  private void seen(double bearing) {
    assertThat(line.get("key").textValue()).as("%s", line).isEqualTo(colour(bearing));
    Map<String, Double> beliefs = new LinkedHashMap<>();
    double heading = number(situation, "heading");
    beliefs.put("sector-from-the-light", bearing + 180);
    beliefs.put("relative-read-as-true", bearing - heading);
    beliefs.put("bow-hand-swapped", 2 * heading - bearing);
    for (JsonNode each : line.get("options")) {
      if (!each.get("misconception").isNull()) {
        double read = beliefs.get(each.get("misconception").textValue());
        assertThat(each.get("value").textValue()).as("%s", line).isEqualTo(colour(turned(read)));
      }
    }
  }

  /** Walks each sector degree by degree; all bearings are whole. */
  private String colour(double bearing) {
    for (JsonNode each : light.get("sectors")) {
      int degree = (int) number(each, "from");
      while (degree != (int) number(each, "to")) {
        if (degree == (int) bearing) {
          return each.get("colour").textValue();
        }
        degree = (degree + 1) % 360;
      }
    }
    return "obscured";
  }

  private void fairway() {
    double bearing = number(situation, "lightBearing");
    assertThat(line.get("key").textValue())
        .as("%s", line)
        .isEqualTo(colour(bearing))
        .isEqualTo(lateral(bearing));
  }

  private void limit() {
    JsonNode answer = line.get("answer");
    assertThat(answer.get("unit").textValue()).isEqualTo("°");
    assertThat(number(answer, "tolerance")).isEqualTo(1);
    double limit = number(answer, "value");
    String beyond = situation.get("whiteTurns").textValue();
    boolean grows = colour(limit).equals(beyond);
    assertThat(colour(grows ? limit - 1 : limit)).as("%s", line).isEqualTo("white");
    assertThat(lateral(limit + (grows ? 1 : -1))).as("%s", line).isEqualTo(beyond);
    for (JsonNode each : answer.get("beliefs")) {
      double led = number(each, "value");
      if (each.get("misconception").textValue().equals("sector-from-the-light")) {
        assertThat(led).isEqualTo(turned(limit + 180));
      } else {
        assertThat(StrictMath.abs(led - limit)).isBetween(6.0, 14.0);
      }
    }
    assertThat(answer.get("beliefs")).hasSize(2);
  }

  /** The boat lies behind the bearing; left of the way in is the port side. */
  private String lateral(double bearing) {
    double in = StrictMath.toRadians(white());
    double back = StrictMath.toRadians(bearing + 180);
    double across =
        StrictMath.sin(back) * StrictMath.cos(in) - StrictMath.cos(back) * StrictMath.sin(in);
    boolean red = across < 0 == line.get("region").textValue().equals("A");
    return red ? "red" : "green";
  }

  private double white() {
    for (JsonNode each : light.get("sectors")) {
      if (each.get("colour").textValue().equals("white")) {
        return (number(each, "from") + number(each, "to")) / 2;
      }
    }
    throw new AssertionError("no white sector in " + line);
  }

  private static double number(JsonNode node, String field) {
    return node.get(field).doubleValue();
  }

  private static double turned(double degrees) {
    return (degrees % 360 + 360) % 360;
  }
}
