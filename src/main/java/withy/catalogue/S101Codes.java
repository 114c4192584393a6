package withy.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import withy.core.mark.BodyShape;
import withy.core.mark.Colour;
import withy.core.mark.MarkKind;
import withy.core.mark.Region;
import withy.core.mark.TopmarkShape;

/**
 * Codes of the attributes of IHO S-101, as far as the marks here need them (S-101 Feature Catalogue
 * 2.0.0; the numbers are those of S-57).
 */
final class S101Codes {
  static final Map<Integer, Colour> COLOUR =
      sorted(
          Map.of(
              1, Colour.WHITE,
              2, Colour.BLACK,
              3, Colour.RED,
              4, Colour.GREEN,
              5, Colour.BLUE,
              6, Colour.YELLOW,
              7, Colour.GREY,
              11, Colour.ORANGE));

  static final Map<Integer, BodyShape> BUOY_SHAPE =
      sorted(
          Map.of(
              1, BodyShape.CONICAL,
              2, BodyShape.CAN,
              3, BodyShape.SPHERICAL,
              4, BodyShape.PILLAR,
              5, BodyShape.SPAR,
              6, BodyShape.BARREL));

  static final List<Integer> BEACON_SHAPE = List.of(1, 2, 3, 4, 5, 6, 7);
  static final List<Integer> COLOUR_PATTERN = List.of(1, 2, 3, 4, 5, 6);

  static final Map<Integer, TopmarkShape> TOPMARK =
      sorted(
          Map.ofEntries(
              Map.entry(1, TopmarkShape.CONE_UP),
              Map.entry(2, TopmarkShape.CONE_DOWN),
              Map.entry(3, TopmarkShape.SPHERE),
              Map.entry(4, TopmarkShape.TWO_SPHERES),
              Map.entry(5, TopmarkShape.CAN),
              Map.entry(7, TopmarkShape.X),
              Map.entry(8, TopmarkShape.UPRIGHT_CROSS),
              Map.entry(10, TopmarkShape.TWO_CONES_POINT_TO_POINT),
              Map.entry(11, TopmarkShape.TWO_CONES_BASE_TO_BASE),
              Map.entry(13, TopmarkShape.TWO_CONES_UP),
              Map.entry(14, TopmarkShape.TWO_CONES_DOWN)));

  static final Map<Integer, MarkKind> LATERAL =
      sorted(
          Map.of(
              1, MarkKind.PORT_HAND,
              2, MarkKind.STARBOARD_HAND,
              3, MarkKind.PREFERRED_CHANNEL_TO_STARBOARD,
              4, MarkKind.PREFERRED_CHANNEL_TO_PORT));

  static final Map<Integer, MarkKind> CARDINAL =
      sorted(
          Map.of(
              1, MarkKind.NORTH_CARDINAL,
              2, MarkKind.EAST_CARDINAL,
              3, MarkKind.SOUTH_CARDINAL,
              4, MarkKind.WEST_CARDINAL));

  static final Map<Integer, Region> SYSTEM = sorted(Map.of(1, Region.A, 2, Region.B));

  /** How the notation of charts begins for a class of light. */
  static final Map<Integer, String> LIGHT =
      sorted(
          Map.ofEntries(
              Map.entry(1, "F"),
              Map.entry(2, "Fl"),
              Map.entry(3, "LFl"),
              Map.entry(4, "Q"),
              Map.entry(5, "VQ"),
              Map.entry(6, "UQ"),
              Map.entry(7, "Iso"),
              Map.entry(8, "Oc"),
              Map.entry(9, "IQ"),
              Map.entry(10, "IVQ"),
              Map.entry(11, "IUQ"),
              Map.entry(12, "Mo"),
              Map.entry(25, "Q"),
              Map.entry(26, "VQ")));

  /** Classes of light whose group is followed by a long flash. */
  static final List<Integer> WITH_LONG_FLASH = List.of(25, 26);

  /** A special mark that is a leading mark. */
  static final int LEADING_MARK = 16;

  /** Codes of special marks in the catalogue. */
  static final List<Integer> SPECIAL_PURPOSE = specialPurposes();

  private S101Codes() {}

  private static <V> Map<Integer, V> sorted(Map<Integer, V> codes) {
    return java.util.Collections.unmodifiableMap(new TreeMap<>(codes));
  }

  private static List<Integer> specialPurposes() {
    List<Integer> codes = new ArrayList<>();
    for (int code = 1; code <= 63; code++) {
      if (code != 38 && code != 13) {
        codes.add(code);
      }
    }
    return List.copyOf(codes);
  }

  static <V> List<Integer> known(Map<Integer, V> codes) {
    return List.copyOf(codes.keySet());
  }

  /** What an attribute that must be there stands for; null where it is missing or unknown. */
  static <V> @Nullable V required(Attributes attributes, String name, Map<Integer, V> codes) {
    Integer code = attributes.requiredCode(name, known(codes));
    return code == null ? null : Objects.requireNonNull(codes.get(code));
  }

  /** What an attribute stands for; null where it is missing or unknown. */
  static <V> @Nullable V optional(Attributes attributes, String name, Map<Integer, V> codes) {
    Integer code = attributes.code(name, known(codes));
    return code == null ? null : Objects.requireNonNull(codes.get(code));
  }
}
