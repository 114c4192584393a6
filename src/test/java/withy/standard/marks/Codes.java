package withy.standard.marks;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import withy.core.mark.BodyShape;
import withy.core.mark.Colour;
import withy.core.mark.ColourPattern;
import withy.core.mark.MarkKind;
import withy.core.mark.TopmarkShape;

/** What the attribute codes of IHO S-57 mean in our terms (object catalogue, edition 3.1). */
final class Codes {
  /** COLOUR. */
  private static final Map<String, Colour> COLOURS =
      Map.of(
          "1", Colour.WHITE,
          "2", Colour.BLACK,
          "3", Colour.RED,
          "4", Colour.GREEN,
          "5", Colour.BLUE,
          "6", Colour.YELLOW,
          "7", Colour.GREY,
          "11", Colour.ORANGE);

  /** COLPAT; none is a body of one colour. */
  private static final Map<String, ColourPattern> PATTERNS =
      Map.of(
          "", ColourPattern.PLAIN,
          "1", ColourPattern.HORIZONTAL,
          "2", ColourPattern.VERTICAL,
          "3", ColourPattern.DIAGONAL,
          "4", ColourPattern.SQUARED,
          "6", ColourPattern.BORDER);

  /** TOPSHP. */
  private static final Map<String, TopmarkShape> TOPMARKS =
      Map.ofEntries(
          Map.entry("1", TopmarkShape.CONE_UP),
          Map.entry("2", TopmarkShape.CONE_DOWN),
          Map.entry("3", TopmarkShape.SPHERE),
          Map.entry("4", TopmarkShape.TWO_SPHERES),
          Map.entry("5", TopmarkShape.CAN),
          Map.entry("7", TopmarkShape.X),
          Map.entry("8", TopmarkShape.UPRIGHT_CROSS),
          Map.entry("10", TopmarkShape.TWO_CONES_POINT_TO_POINT),
          Map.entry("11", TopmarkShape.TWO_CONES_BASE_TO_BASE),
          Map.entry("13", TopmarkShape.TWO_CONES_UP),
          Map.entry("14", TopmarkShape.TWO_CONES_DOWN));

  /** BOYSHP. */
  private static final Map<String, BodyShape> BUOYS =
      Map.of(
          "1", BodyShape.CONICAL,
          "2", BodyShape.CAN,
          "3", BodyShape.SPHERICAL,
          "4", BodyShape.PILLAR,
          "5", BodyShape.SPAR,
          "6", BodyShape.BARREL);

  /** The classes and the attribute that defines the kind; none where the class alone does. */
  private static final Map<String, MarkKind> KINDS =
      Map.ofEntries(
          Map.entry("BOYLAT CATLAM=1", MarkKind.PORT_HAND),
          Map.entry("BOYLAT CATLAM=2", MarkKind.STARBOARD_HAND),
          Map.entry("BOYLAT CATLAM=3", MarkKind.PREFERRED_CHANNEL_TO_STARBOARD),
          Map.entry("BOYLAT CATLAM=4", MarkKind.PREFERRED_CHANNEL_TO_PORT),
          Map.entry("BOYCAR CATCAM=1", MarkKind.NORTH_CARDINAL),
          Map.entry("BOYCAR CATCAM=2", MarkKind.EAST_CARDINAL),
          Map.entry("BOYCAR CATCAM=3", MarkKind.SOUTH_CARDINAL),
          Map.entry("BOYCAR CATCAM=4", MarkKind.WEST_CARDINAL),
          Map.entry("BOYISD", MarkKind.ISOLATED_DANGER),
          Map.entry("BOYSAW", MarkKind.SAFE_WATER),
          Map.entry("BOYSPP CATSPM=...", MarkKind.SPECIAL),
          Map.entry("BOYSPP CATSPM=27", MarkKind.EMERGENCY_WRECK));

  private Codes() {}

  static List<Colour> colours(String codes) {
    return Arrays.stream(codes.split(",")).map(each -> known(COLOURS, each)).toList();
  }

  static ColourPattern pattern(String code) {
    return known(PATTERNS, code);
  }

  static @Nullable TopmarkShape topmark(String code) {
    return code.isEmpty() ? null : known(TOPMARKS, code);
  }

  /** A buoy's shape, or with a B in front a beacon's: all beacons are one body to us. */
  static BodyShape body(String code) {
    return code.startsWith("B") ? BodyShape.BEACON : known(BUOYS, code);
  }

  static MarkKind kind(String classes, String defining) {
    String buoy = classes.split("/")[0];
    return known(KINDS, defining.isEmpty() ? buoy : buoy + " " + defining);
  }

  private static <T> T known(Map<String, T> codes, String code) {
    T term = codes.get(code);
    if (term == null) {
      throw new IllegalArgumentException("code '" + code + "' has no term in " + codes.keySet());
    }
    return term;
  }
}
