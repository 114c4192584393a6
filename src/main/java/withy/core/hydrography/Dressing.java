package withy.core.hydrography;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.Chance;
import withy.core.light.LightCharacter;
import withy.core.light.LightColour;
import withy.core.mark.Appearance;
import withy.core.mark.BodyShape;
import withy.core.mark.MarkDescription;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkLook;
import withy.core.mark.NumberRules;
import withy.core.mark.Parity;
import withy.core.mark.Practice;
import withy.core.waterway.Danger;
import withy.core.waterway.PlacedMark;

/** Gives the marks of a surveyed water the looks that a practice gives them. */
final class Dressing {
  /** Metres from the edge of a danger within which a mark is taken to belong to it. */
  private static final double BESIDE = 400;

  private static final int MOST_DIGITS = 4;

  private final Practice practice;
  private final Chance chance;

  Dressing(Practice practice, Chance chance) {
    this.practice = practice;
    this.chance = chance;
  }

  List<PlacedMark> of(SurveyedWater water) {
    List<PlacedMark> marks = new ArrayList<>();
    for (SurveyedMark each : water.marks()) {
      description(each).ifPresent(found -> marks.add(dressed(each, found)));
    }
    for (Danger each : water.dangers()) {
      if (isLeftBare(each, water.marks())) {
        practice
            .mark(MarkKind.ISOLATED_DANGER)
            .ifPresent(found -> marks.add(dressed(guarding(each), found)));
      }
    }
    return marks;
  }

  private static SurveyedMark guarding(Danger danger) {
    LightCharacter light = LightCharacter.parse("Fl(2) W 5s");
    return new SurveyedMark(MarkKind.ISOLATED_DANGER, danger.at(), null, null, null, false, light);
  }

  /** Whether a danger has cardinal marks beside it, of which the practice has none. */
  private boolean isLeftBare(Danger danger, List<SurveyedMark> marks) {
    boolean lost = false;
    for (SurveyedMark each : marks) {
      boolean near = each.position().distanceTo(danger.at()) < danger.radius() + BESIDE;
      if (near && each.kind().equals(MarkKind.ISOLATED_DANGER)) {
        return false;
      }
      lost |= near && each.kind().isCardinal() && description(each).isEmpty();
    }
    return lost;
  }

  private Optional<MarkDescription> description(SurveyedMark mark) {
    List<MarkDescription> fit =
        practice.marks(each -> each.kind().equals(mark.kind()) && each.waters() == null);
    if (fit.isEmpty()) {
      return isOfTheSystem(mark.kind()) ? Optional.empty() : practice.mark(MarkKind.SPECIAL);
    }
    return Optional.of(
        fit.stream()
            .filter(each -> each.look().isFixed() == mark.fixed())
            .findFirst()
            .orElse(fit.get(0)));
  }

  /** Whether the buoyage system itself has marks of a kind, whatever nations add to it. */
  private static boolean isOfTheSystem(MarkKind kind) {
    return Practice.IALA_A.mark(kind).isPresent();
  }

  private PlacedMark dressed(SurveyedMark mark, MarkDescription description) {
    return new PlacedMark(
        description.kind(),
        mark.position(),
        mark.serves(),
        label(mark),
        appearance(mark, description.look(), light(mark.light(), description)));
  }

  private Appearance appearance(SurveyedMark mark, MarkLook look, @Nullable LightCharacter light) {
    @Nullable BodyShape body = mark.body();
    if (body == null || !look.bodies().contains(body)) {
      return chance.pick(look.appearances(light));
    }
    return look.appearance(body, look.topmarkPossible(body), light);
  }

  /** The rhythm of the survey in the colour of the practice, if that is allowed. */
  private static @Nullable LightCharacter light(
      @Nullable LightCharacter surveyed, MarkDescription description) {
    List<LightCharacter> usual = description.look().lights();
    if (surveyed == null || usual.isEmpty()) {
      return null;
    }
    if (description.lightLimit().allows(surveyed)) {
      return surveyed;
    }
    LightColour colour = usual.get(0).colour();
    LightCharacter coloured =
        LightCharacter.of(surveyed.rhythm(), List.of(colour), surveyed.periodMillis());
    return description.lightLimit().allows(coloured) ? coloured : usual.get(0);
  }

  /** Numbers are even on red and odd on green: in pairs, 1 and 2, 3 and 4, they change places. */
  private @Nullable String label(SurveyedMark mark) {
    @Nullable String label = mark.label();
    if (label == null || !label.matches("[1-9][0-9]{0," + (MOST_DIGITS - 1) + "}")) {
      return label;
    }
    int number = Integer.parseInt(label);
    Optional<Parity> parity = NumberRules.parity(practice.region(), mark.kind());
    boolean fits = parity.isEmpty() || parity.get() == Parity.of(number);
    return fits ? label : Integer.toString(number % 2 == 0 ? number - 1 : number + 1);
  }
}
