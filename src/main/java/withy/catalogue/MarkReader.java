package withy.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.LocalPlane;
import withy.core.hydrography.SurveyedMark;
import withy.core.item.Message;
import withy.core.light.LightCharacter;
import withy.core.light.LightColour;
import withy.core.light.LightNotationException;
import withy.core.mark.BodyShape;
import withy.core.mark.Colour;
import withy.core.mark.ColourPattern;
import withy.core.mark.MarkDescription;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkLook;
import withy.core.mark.MarkingRules;
import withy.core.mark.Practice;
import withy.core.mark.TopmarkShape;

/**
 * Reads marks, and holds what a file says of their looks against what the rules of the region say
 * of their kind.
 */
final class MarkReader {
  private static final String GROUP = "(\\([0-9A-Z+]+\\))*";
  private static final double LONGEST_PERIOD = 60;
  private static final String LABEL = "[A-Z0-9]{1,4}";

  private final Practice practice;
  private final Problems problems;
  private final LocalPlane plane;

  /**
   * A reader.
   *
   * @param practice the system of the region in which the file says that the water lies
   */
  MarkReader(Practice practice, Problems problems, LocalPlane plane) {
    this.practice = practice;
    this.problems = problems;
    this.plane = plane;
  }

  /** The mark of a feature; empty where something is wrong, which is noted. */
  Optional<SurveyedMark> read(SurveyedFeature feature) {
    Attributes attributes = feature.attributes();
    @Nullable MarkKind kind = kind(feature);
    @Nullable BodyShape body = body(feature);
    @Nullable LightCharacter light = light(attributes);
    String serves = attributes.text("serves");
    String name = attributes.featureName();
    if (kind == null) {
      return Optional.empty();
    }
    practice.mark(kind).ifPresent(rules -> compare(feature, rules, body, light));
    String label = name != null && name.matches(LABEL) ? name : null;
    return Optional.of(
        new SurveyedMark(
            kind, feature.at(plane), serves, label, body, feature.type().isBeacon(), light));
  }

  private static @Nullable MarkKind kind(SurveyedFeature feature) {
    Attributes attributes = feature.attributes();
    return switch (feature.type()) {
      case LATERAL_BUOY, LATERAL_BEACON ->
          S101Codes.required(attributes, "categoryOfLateralMark", S101Codes.LATERAL);
      case CARDINAL_BUOY, CARDINAL_BEACON ->
          S101Codes.required(attributes, "categoryOfCardinalMark", S101Codes.CARDINAL);
      case ISOLATED_DANGER_BUOY, ISOLATED_DANGER_BEACON -> MarkKind.ISOLATED_DANGER;
      case SAFE_WATER_BUOY, SAFE_WATER_BEACON -> MarkKind.SAFE_WATER;
      case EMERGENCY_WRECK_MARKING_BUOY -> MarkKind.EMERGENCY_WRECK;
      default -> special(attributes);
    };
  }

  /** A leading mark is a front one until its line says otherwise. */
  private static MarkKind special(Attributes attributes) {
    List<Integer> purposes =
        attributes.codes("categoryOfSpecialPurposeMark", S101Codes.SPECIAL_PURPOSE);
    return purposes.contains(S101Codes.LEADING_MARK) ? MarkKind.LEADING_FRONT : MarkKind.SPECIAL;
  }

  private static @Nullable BodyShape body(SurveyedFeature feature) {
    if (feature.type().isBeacon()) {
      feature.attributes().code("beaconShape", S101Codes.BEACON_SHAPE);
      return BodyShape.BEACON;
    }
    return S101Codes.optional(feature.attributes(), "buoyShape", S101Codes.BUOY_SHAPE);
  }

  /** Read in white; the kind of the mark decides the colour. */
  private @Nullable LightCharacter light(Attributes attributes) {
    String start = S101Codes.optional(attributes, "lightCharacteristic", S101Codes.LIGHT);
    Double period = attributes.number("signalPeriod", 0.2, LONGEST_PERIOD);
    String group = attributes.text("signalGroup");
    if (start == null) {
      return null;
    }
    String stated = group == null ? "" : group;
    if (!stated.matches(GROUP)) {
      problems.add(attributes.place("signalGroup"), "signal-group", stated);
      return null;
    }
    String notation =
        start
            + rhythm(stated, isFollowedByLongFlash(attributes))
            + " W"
            + (period == null ? "" : " " + period + "s");
    try {
      return LightCharacter.parse(notation);
    } catch (LightNotationException unfit) {
      problems.add(attributes.place("lightCharacteristic"), "light", notation);
      return null;
    }
  }

  private static boolean isFollowedByLongFlash(Attributes attributes) {
    Integer code = attributes.code("lightCharacteristic", S101Codes.known(S101Codes.LIGHT));
    return code != null && S101Codes.WITH_LONG_FLASH.contains(code);
  }

  private static String rhythm(String group, boolean longFlash) {
    String first = group.indexOf(')') < 0 ? "" : group.substring(0, group.indexOf(')') + 1);
    String counted = first.equals("(1)") ? "" : first;
    return longFlash ? first + "+LFl" : counted;
  }

  private void compare(
      SurveyedFeature feature,
      MarkDescription rules,
      @Nullable BodyShape body,
      @Nullable LightCharacter light) {
    Attributes attributes = feature.attributes();
    if (!rules.kind().isLeading()) {
      compareColours(feature, rules);
      compareTopmark(attributes, rules);
    }
    if (body != null
        && !feature.type().isBeacon()
        && !MarkingRules.allows(practice, rules.kind(), body)) {
      problems.remark(attributes.place("buoyShape"), "shape", body, named(rules));
    }
    if (light != null && !isAllowed(rules, light)) {
      String shown = light.shortNotation().replace(" W", "");
      problems.add(
          attributes.place("lightCharacteristic"), "light-contradicts", shown, named(rules));
    }
  }

  private static Message named(MarkDescription rules) {
    return Message.of(rules.nameKey());
  }

  private static boolean isAllowed(MarkDescription rules, LightCharacter light) {
    for (LightCharacter each : rules.look().lights()) {
      LightColour colour = each.colour();
      if (rules
          .lightLimit()
          .allows(LightCharacter.of(light.rhythm(), List.of(colour), light.periodMillis()))) {
        return true;
      }
    }
    return false;
  }

  /** Towers of beacons are often painted in part, so their first colour alone must be right. */
  private void compareColours(SurveyedFeature feature, MarkDescription rules) {
    MarkLook look = rules.look();
    Attributes attributes = feature.attributes();
    List<Colour> seen = new ArrayList<>();
    for (int code : attributes.codes("colour", S101Codes.known(S101Codes.COLOUR))) {
      Colour colour = S101Codes.COLOUR.get(code);
      if (colour != null) {
        seen.add(colour);
      }
    }
    attributes.codes("colourPattern", S101Codes.COLOUR_PATTERN);
    if (seen.isEmpty()) {
      return;
    }
    boolean fits =
        feature.type().isBeacon()
            ? look.colours().contains(seen.get(0))
            : look.colours().equals(seen) || alternates(look, seen);
    if (!fits) {
      problems.add(
          attributes.place("colour"), "colour-contradicts", named(rules), practice.region());
    }
  }

  /** Vertical stripes may begin with either colour; an isolated danger may have more bands. */
  private static boolean alternates(MarkLook look, List<Colour> seen) {
    boolean free =
        look.pattern() == ColourPattern.VERTICAL || look.kind().equals(MarkKind.ISOLATED_DANGER);
    for (int i = 0; free && i < seen.size(); i++) {
      free = look.colours().contains(seen.get(i)) && (i < 2 || seen.get(i) == seen.get(i - 2));
    }
    return free && seen.size() > 1 && seen.get(0) != seen.get(1);
  }

  private void compareTopmark(Attributes attributes, MarkDescription rules) {
    MarkLook look = rules.look();
    TopmarkShape seen = S101Codes.optional(attributes, "topmarkDaymarkShape", S101Codes.TOPMARK);
    boolean fits = seen == null || (look.topmark() != null && look.topmark().shape() == seen);
    if (!fits) {
      problems.add(attributes.place("topmarkDaymarkShape"), "topmark-contradicts", named(rules));
    }
  }
}
