package withy.core.mark;

import java.util.List;
import java.util.stream.Stream;
import withy.core.light.LightCharacter;

/**
 * Light characters in common use, the most usual first. The periods of lateral, preferred-channel,
 * isolated-danger, safe-water and special lights are national custom: IALA fixes none.
 */
final class Lights {
  private Lights() {}

  static List<LightCharacter> of(Practice practice, MarkKind kind) {
    return notations(practice, kind).map(Lights::character).toList();
  }

  private static Stream<String> notations(Practice practice, MarkKind kind) {
    return switch (kind) {
      case PORT_HAND -> coloured(lateral(practice), practice.region().portHand());
      case STARBOARD_HAND -> coloured(lateral(practice), practice.region().starboardHand());
      case PREFERRED_CHANNEL_TO_STARBOARD ->
          coloured(preferred(practice), practice.region().portHand());
      case PREFERRED_CHANNEL_TO_PORT ->
          coloured(preferred(practice), practice.region().starboardHand());
      case NORTH_CARDINAL -> Stream.of("Q W", "VQ W");
      case EAST_CARDINAL -> Stream.of("Q(3) W 10s", "VQ(3) W 5s");
      case SOUTH_CARDINAL -> Stream.of("Q(6)+LFl W 15s", "VQ(6)+LFl W 10s");
      case WEST_CARDINAL -> Stream.of("Q(9) W 15s", "VQ(9) W 10s");
      case ISOLATED_DANGER -> isolatedDanger(practice);
      case SAFE_WATER -> safeWater(practice);
      case SPECIAL -> special(practice);
      case EMERGENCY_WRECK -> Stream.of("Al.Oc BuY 3s");
    };
  }

  /** A: as charted in France. B: Japan. Canada: TP 968. USA: 33 CFR 62.45, at most 30 a minute. */
  private static Stream<String> lateral(Practice practice) {
    return switch (practice) {
      case IALA_A ->
          Stream.of(
              "Fl %s 4s",
              "Fl %s 2.5s",
              "Fl(2) %s 6s",
              "Fl(3) %s 12s",
              "Fl(4) %s 15s",
              "Q %s",
              "VQ %s",
              "Iso %s 4s",
              "Oc(2) %s 6s");
      case IALA_B ->
          Stream.of("Fl %s 4s", "Fl %s 3s", "Fl %s 5s", "Fl(2) %s 6s", "Q %s", "Iso %s 4s");
      case CANADA -> Stream.of("Fl %s 4s", "Q %s");
      case USA -> Stream.of("Fl %s 4s", "Fl %s 2.5s", "Fl %s 6s", "Q %s", "Iso %s 6s", "Oc %s 4s");
    };
  }

  private static Stream<String> preferred(Practice practice) {
    return practice == Practice.IALA_B
        ? Stream.of("Fl(2+1) %s 7s", "Fl(2+1) %s 10s")
        : Stream.of("Fl(2+1) %s 6s", "Fl(2+1) %s 10s");
  }

  private static Stream<String> isolatedDanger(Practice practice) {
    return practice == Practice.IALA_A
        ? Stream.of("Fl(2) W 6s", "Fl(2) W 5s", "Fl(2) W 10s")
        : Stream.of("Fl(2) W 5s", "Fl(2) W 10s");
  }

  private static Stream<String> safeWater(Practice practice) {
    return switch (practice) {
      case IALA_A -> Stream.of("LFl W 10s", "Iso W 4s", "Oc W 6s", "Mo(A) W 8s");
      case IALA_B -> Stream.of("Mo(A) W 8s", "Iso W 4s", "LFl W 10s", "Oc W 6s");
      case CANADA -> Stream.of("Mo(A) W 6s", "LFl W 10s");
      case USA -> Stream.of("Mo(A) W 8s");
    };
  }

  private static Stream<String> special(Practice practice) {
    return switch (practice) {
      case IALA_A, IALA_B, CANADA -> Stream.of("Fl Y 4s", "Fl(5) Y 20s");
      case USA -> Stream.of("Fl Y 4s", "Fl Y 2.5s", "Fl Y 6s");
    };
  }

  private static Stream<String> coloured(Stream<String> patterns, Colour colour) {
    String letter = colour == Colour.RED ? "R" : "G";
    return patterns.map(each -> each.replace("%s", letter));
  }

  private static LightCharacter character(String notation) {
    return LightCharacter.parse(notation);
  }
}
