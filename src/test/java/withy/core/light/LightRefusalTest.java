package withy.core.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import withy.core.light.LightNotationException.Reason;
import withy.wording.LightFaults;
import withy.wording.Wording;

/** What is refused, with the reason, the sentence and the place. */
class LightRefusalTest {

  private record Refusal(String text, Reason reason, String sentence, int place) {}

  static Stream<Refusal> refusals() {
    return Stream.of(
        refusal("", Reason.EMPTY, "a light character is needed, such as Fl R 4s", 1),
        refusal("  ", Reason.EMPTY, "a light character is needed, such as Fl R 4s", 3),
        refusal("Xl R 4s", Reason.UNKNOWN_CLASS, "no class of light is written \"Xl\"", 1),
        refusal("Fl(2)+LFl W", Reason.UNKNOWN_CLASS, "no class of light is written \"Fl+LFl\"", 6),
        refusal("Flash R", Reason.UNKNOWN_CLASS, "no class of light is written \"Flash\"", 1),
        refusal("Fl X 4s", Reason.UNKNOWN_COLOUR, "no colour of light is written \"X\"", 4),
        refusal("Fl B 4s", Reason.UNKNOWN_COLOUR, "no colour of light is written \"B\"", 4),
        refusal("Fl RR 4s", Reason.COLOUR_TWICE, "Fl names the colour R twice", 7),
        refusal(
            "Al W 4s",
            Reason.ONE_COLOUR_ALTERNATES,
            "an alternating light shows two colours or more, not W",
            6),
        refusal(
            "Al.Fl(2)WRG 10s",
            Reason.COLOURS_OUTNUMBER_FLASHES,
            "3 colours need as many flashes or more, not 2",
            13),
        refusal(
            "Fl R 4s buoy", Reason.TRAILING, "\"buoy\" does not belong to a light character", 9),
        refusal("UQ(3)", Reason.GROUP_NOT_TAKEN, "UQ takes no group such as (3)", 3),
        refusal("F(1) W", Reason.GROUP_NOT_TAKEN, "F takes no group such as (1)", 2),
        refusal("IQ(3) 10s", Reason.GROUP_NOT_TAKEN, "IQ takes no group such as (3)", 3),
        refusal("Q(2+1) 10s", Reason.GROUP_NOT_TAKEN, "Q takes no group such as (2+1)", 2),
        refusal("Gp Fl W", Reason.GROUP_MISSING, "Gp Fl needs a group such as (3)", 7),
        refusal("Q+LFl 15s", Reason.GROUP_MISSING, "Q needs a group such as (3)", 2),
        refusal("Mo W", Reason.LETTERS_MISSING, "Mo needs letters such as (A)", 4),
        refusal(
            "Fl(A) 4s",
            Reason.GROUP_UNREADABLE,
            "a group is written like (3), (2+1) or (A), not \"(A) 4s\"",
            3),
        refusal(
            "Fl(2 4s",
            Reason.GROUP_UNREADABLE,
            "a group is written like (3), (2+1) or (A), not \"(2 4s\"",
            3),
        refusal("Fl(0) 4s", Reason.GROUP_NUMBER, "a group counts 2 to 30 flashes, not 0", 3),
        refusal("Fl(99) 4s", Reason.GROUP_NUMBER, "a group counts 2 to 30 flashes, not 99", 3),
        refusal(
            "Fl(2+2) 10s",
            Reason.GROUPS_ALIKE,
            "the groups of (2+2) are alike; a composite group has different ones",
            3),
        refusal(
            "Mo(1) 8s",
            Reason.MORSE_LETTERS,
            "Mo takes one to 3 letters from A to Z, not \"1\"",
            3),
        refusal("F R 4s", Reason.PERIOD_NOT_TAKEN, "a fixed light has no period, not even 4 s", 5),
        refusal("Fl R 0s", Reason.PERIOD_NOT_POSITIVE, "a period is longer than 0 s, not 0 s", 6),
        refusal("Fl R -4s", Reason.PERIOD_NOT_POSITIVE, "a period is longer than 0 s, not -4 s", 7),
        refusal("Fl R 9999s", Reason.PERIOD_TOO_LONG, "a period is at most 300 s, not 9999 s", 6),
        refusal(
            "Fl R 1234567890s",
            Reason.NUMBER_UNREADABLE,
            "\"1234567890\" is no number that belongs here",
            6),
        refusal("Fl R 5s 0M", Reason.NUMBER_UNREADABLE, "\"0\" is no number that belongs here", 9),
        refusal(
            "Fl R 4.0001s",
            Reason.TIME_TOO_FINE,
            "times have at most three decimals, not 4.0001 s",
            6),
        refusal("Fl R 4", Reason.UNIT_MISSING, "4 needs a unit: s, m, ft or M", 6),
        refusal("Fl R 4s 5s", Reason.STATED_TWICE, "the period is stated twice", 9),
        refusal("Fl R 4s 5ft 6ft", Reason.STATED_TWICE, "the elevation is stated twice", 13),
        refusal("Fl R 4s 5nm 6nm", Reason.STATED_TWICE, "the range is stated twice", 13),
        refusal("Fl R 4s 9-5M", Reason.RANGE_COUNT, "2 ranges do not go with 1 colours", 6),
        refusal(
            "Fl R 4s G5",
            Reason.RANGE_COLOUR,
            "a range is stated for G, which is none of the colours",
            6),
        refusal("Q 2s", Reason.RATE, "Q means 50 to 79 flashes a minute, not 30", 3),
        refusal("Fl 1s", Reason.RATE, "Fl means 0 to 49 flashes a minute, not 60", 4),
        refusal("Fl(5) 5s", Reason.RATE, "Fl(5) means 0 to 49 flashes a minute, not 60", 7),
        refusal(
            "Q(9) 7.3s",
            Reason.DOES_NOT_FIT,
            "the flashes of Q(9) do not fit into a period of 7.3 s",
            6),
        refusal(
            "LFl 4s", Reason.DOES_NOT_FIT, "the flashes of LFl do not fit into a period of 4 s", 5),
        refusal(
            "Mo(U) 3.3s",
            Reason.DOES_NOT_FIT,
            "the flashes of Mo(U) do not fit into a period of 3.3 s",
            7),
        refusal(
            "Fl R 4s [1;3",
            Reason.TIMINGS_UNREADABLE,
            "the timings cannot be read from \"[1;3\"",
            9),
        refusal("F R fl. 1s", Reason.TIMINGS_NOT_TAKEN, "a fixed light has no timings", 5),
        refusal(
            "Fl R 4s [0;4]",
            Reason.TIMINGS_ZERO,
            "a stated flash or eclipse lasts longer than 0 s",
            10),
        refusal(
            "Fl W 5s 00.5+(04.0)",
            Reason.TIMINGS_NOT_PERIOD,
            "the timings add up to 4.5 s but the period is 5 s",
            9),
        refusal(
            "Fl(2) W 10s 01.0+(09.0)",
            Reason.TIMINGS_NOT_GROUP,
            "the timings show 1 where Fl(2) means 2",
            13),
        refusal(
            "Fl W 4s [0.4;3.6] 00.5+(03.5)",
            Reason.TIMINGS_DISAGREE,
            "the timings are stated twice and differently",
            19),
        refusal(
            "Al.Fl.WR 10s G.fl. 1s, ec. 4s, R.fl. 1s, ec. 4s",
            Reason.TIMINGS_COLOURS,
            "the colours of the timings are not those of Al.Fl",
            14),
        refusal(
            "Al WG 10s 05.0+(05.0)",
            Reason.ECLIPSE_IN_ALTERNATION,
            "an alternating light has no eclipse",
            11),
        refusal(
            "Iso W 6s 00.6+(05.4)",
            Reason.LIGHT_NOT_EQUAL_TO_DARK,
            "an isophase light is as long as its eclipse, not 0.6 s and 5.4 s",
            10),
        refusal(
            "Oc W 6s fl. 2s, ec. 4s",
            Reason.LIGHT_NOT_LONGER,
            "the light of Oc is longer than the eclipse, not 2 s to 4 s",
            9),
        refusal(
            "Fl W 4s fl. 3s, ec. 1s",
            Reason.DARK_NOT_LONGER,
            "the eclipse of Fl is longer than the light, not 3 s to 1 s",
            9),
        refusal(
            "Fl W 10s fl. 2s, ec. 8s",
            Reason.FLASH_TOO_LONG,
            "the flash of Fl is shorter than 2 s, not 2 s",
            10),
        refusal(
            "LFl W 10s fl. 1.9s, ec. 8.1s",
            Reason.FLASH_TOO_SHORT,
            "the long flash of LFl lasts 2 s or more, not 1.9 s",
            11),
        refusal(
            "Fl(2) W 10s [0.3;1;1.2;7.5]",
            Reason.FLASHES_UNLIKE,
            "the flashes and eclipses of Fl(2) do not differ as 0.3 s and 1.2 s do",
            13),
        refusal(
            "Fl(2) W 10s [0.5;4;0.5;5]",
            Reason.GROUPS_NOT_APART,
            "the groups of Fl(2) do not stand apart in the timings",
            13),
        refusal(
            "Fl(2+1) W 10s [0.5;1;0.5;1;0.5;6.5]",
            Reason.GROUPS_NOT_APART,
            "the groups of Fl(2+1) do not stand apart in the timings",
            15),
        refusal(
            "Mo(A) W 8s [2;0.6;2;3.4]",
            Reason.LETTERS_NOT_SHOWN,
            "the dots and dashes of Mo(A) are not those of the timings",
            12));
  }

  private static Refusal refusal(String text, Reason reason, String sentence, int place) {
    return new Refusal(text, reason, sentence, place);
  }

  @ParameterizedTest
  @MethodSource("refusals")
  void saysWhatIsWrongAndWhere(Refusal refusal) {
    assertThatExceptionOfType(LightNotationException.class)
        .isThrownBy(() -> LightCharacter.parse(refusal.text()))
        .satisfies(
            fault -> {
              assertThat(sentence(fault))
                  .isEqualTo(
                      "%s, in \"%s\" at character %d",
                      refusal.sentence(), refusal.text(), refusal.place());
              assertThat(fault.reason()).isEqualTo(refusal.reason());
              assertThat(fault.place()).isEqualTo(refusal.place());
              assertThat(fault.text()).isEqualTo(refusal.text());
            });
  }

  @Test
  void refusesTextsLongerThanAnyCharacter() {
    assertThatExceptionOfType(LightNotationException.class)
        .isThrownBy(() -> LightCharacter.parse("F".repeat(2001)))
        .satisfies(
            fault ->
                assertThat(sentence(fault))
                    .isEqualTo("a light character has at most 2000 characters, not 2001"));
  }

  @Test
  void refusesPartsThatContradictWithoutAnyText() {
    assertThatExceptionOfType(LightNotationException.class)
        .isThrownBy(
            () -> LightCharacter.of(LightClass.QUICK, LightColour.RED, OptionalInt.of(2000)))
        .satisfies(
            fault ->
                assertThat(sentence(fault)).isEqualTo("Q means 50 to 79 flashes a minute, not 30"));
    assertThatExceptionOfType(LightNotationException.class)
        .isThrownBy(
            () ->
                new LightCharacter(
                    Rhythm.of(LightClass.FLASHING, List.of()),
                    List.of(LightColour.RED),
                    OptionalInt.empty(),
                    Optional.empty(),
                    List.of(),
                    List.of(
                        Phase.light(LightColour.RED, 5000), Phase.light(LightColour.RED, 5000))))
        .satisfies(fault -> assertThat(fault.reason()).isEqualTo(Reason.TIMINGS_NOT_ALTERNATELY));
  }

  @Test
  void everyReasonIsRefusedSomewhereAboveWithItsOwnKey() {
    List<Reason> seen =
        Stream.concat(
                refusals().map(Refusal::reason),
                Stream.of(Reason.TOO_LONG, Reason.TIMINGS_NOT_ALTERNATELY))
            .distinct()
            .toList();
    assertThat(seen).containsExactlyInAnyOrder(Reason.values());
    assertThat(Arrays.stream(Reason.values()).map(Reason::key)).doesNotHaveDuplicates();
    assertThat(Reason.UNKNOWN_CLASS.key()).isEqualTo("light.unknown-class");
  }

  private static String sentence(LightNotationException fault) {
    return LightFaults.sentence(fault, Wording.of(Locale.ENGLISH));
  }
}
