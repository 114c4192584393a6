package withy.core.mark;

import java.util.List;

/**
 * What a practice fixes of its own about the marks of the Maritime Buoyage System. The periods of
 * lateral, preferred-channel, isolated-danger, safe-water and special lights are national custom:
 * IALA fixes none.
 *
 * @param spars whether spar buoys are in use
 * @param handTopmarks whether lateral and preferred-channel marks carry topmarks
 * @param handTopmarksNeeded whether, where only the topmark tells the hand, they must
 * @param specialTopmark whether special marks may carry the X
 * @param lateralRhythms of lateral lights; {@code %s} stands for the letter of the colour
 * @param preferredRhythms of preferred-channel lights
 * @param isolatedDanger lights
 * @param safeWater lights
 * @param special lights
 * @param regularLateral whether lateral lights only flash or occult regularly
 * @param safeWaterPassing how safe-water marks are passed
 * @param safeWaterRule the rule that limits their light
 * @param names what keys of names begin with
 */
record Customs(
    Region region,
    boolean spars,
    boolean handTopmarks,
    boolean handTopmarksNeeded,
    boolean specialTopmark,
    List<String> lateralRhythms,
    List<String> preferredRhythms,
    List<String> isolatedDanger,
    List<String> safeWater,
    List<String> special,
    boolean regularLateral,
    Passing safeWaterPassing,
    LightLimit safeWaterLight,
    String names) {
  /** As charted in France. */
  static final Customs IALA_A =
      new Customs(
          Region.A,
          true,
          true,
          true,
          true,
          List.of(
              "Fl %s 4s",
              "Fl %s 2.5s",
              "Fl(2) %s 6s",
              "Fl(3) %s 12s",
              "Fl(4) %s 15s",
              "Q %s",
              "VQ %s",
              "Iso %s 4s",
              "Oc(2) %s 6s"),
          List.of("Fl(2+1) %s 6s", "Fl(2+1) %s 10s"),
          List.of("Fl(2) W 6s", "Fl(2) W 5s", "Fl(2) W 10s"),
          List.of("LFl W 10s", "Iso W 4s", "Oc W 6s", "Mo(A) W 8s"),
          List.of("Fl Y 4s", "Fl(5) Y 20s"),
          false,
          Passing.EITHER_SIDE,
          LightRules.safeWater(),
          "mark.");

  /** As the Japan Coast Guard lists them. */
  static final Customs IALA_B =
      new Customs(
          Region.B,
          true,
          true,
          true,
          true,
          List.of("Fl %s 4s", "Fl %s 3s", "Fl %s 5s", "Fl(2) %s 6s", "Q %s", "Iso %s 4s"),
          List.of("Fl(2+1) %s 7s", "Fl(2+1) %s 10s"),
          List.of("Fl(2) W 5s", "Fl(2) W 10s"),
          List.of("Mo(A) W 8s", "Iso W 4s", "LFl W 10s", "Oc W 6s"),
          List.of("Fl Y 4s", "Fl(5) Y 20s"),
          false,
          Passing.EITHER_SIDE,
          LightRules.safeWater(),
          "mark.");

  /** TP 968; topmarks are optional, and the fairway buoy is kept to port in both directions. */
  static final Customs CANADA =
      new Customs(
          Region.B,
          true,
          true,
          false,
          true,
          List.of("Fl %s 4s", "Q %s"),
          List.of("Fl(2+1) %s 6s", "Fl(2+1) %s 10s"),
          List.of("Fl(2) W 5s", "Fl(2) W 10s"),
          List.of("Mo(A) W 6s", "LFl W 10s"),
          List.of("Fl Y 4s", "Fl(5) Y 20s"),
          false,
          Passing.ALWAYS_TO_PORT,
          LightRules.morseOrLong(),
          "mark.canada.");

  /** 33 CFR 62.25 to 62.45, at most 30 flashes a minute; they name no spars and no topmarks. */
  static final Customs USA =
      new Customs(
          Region.B,
          false,
          false,
          false,
          false,
          List.of("Fl %s 4s", "Fl %s 2.5s", "Fl %s 6s", "Q %s", "Iso %s 6s", "Oc %s 4s"),
          List.of("Fl(2+1) %s 6s", "Fl(2+1) %s 10s"),
          List.of("Fl(2) W 5s", "Fl(2) W 10s"),
          List.of("Mo(A) W 8s"),
          List.of("Fl Y 4s", "Fl Y 2.5s", "Fl Y 6s"),
          true,
          Passing.EITHER_SIDE,
          LightRules.morse(),
          "mark.usa.");

  /** The lateral lights of a colour, the most usual first. */
  List<String> lateral(Colour colour) {
    return coloured(lateralRhythms, colour);
  }

  /** The preferred-channel lights of a colour, the most usual first. */
  List<String> preferred(Colour colour) {
    return coloured(preferredRhythms, colour);
  }

  /** Which lights a lateral mark of a colour may show. */
  LightLimit lateralLimit(Colour colour) {
    return regularLateral ? LightRules.regular(colour) : LightRules.lateral(colour);
  }

  private static List<String> coloured(List<String> patterns, Colour colour) {
    String letter = colour == Colour.RED ? "R" : "G";
    return patterns.stream().map(each -> each.replace("%s", letter)).toList();
  }
}
