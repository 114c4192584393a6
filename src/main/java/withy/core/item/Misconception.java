package withy.core.item;

import static withy.core.item.Concept.BUOYAGE_DIRECTION;
import static withy.core.item.Concept.CARDINAL_IDENTITY;
import static withy.core.item.Concept.CARDINAL_LIGHT;
import static withy.core.item.Concept.CARDINAL_SIDE;
import static withy.core.item.Concept.CHART_OVER_RULE;
import static withy.core.item.Concept.CLEARANCE;
import static withy.core.item.Concept.EMERGENCY_WRECK;
import static withy.core.item.Concept.FIXED_MARK;
import static withy.core.item.Concept.ISOLATED_DANGER;
import static withy.core.item.Concept.LATERAL_LIGHT;
import static withy.core.item.Concept.LATERAL_SHAPE;
import static withy.core.item.Concept.LATERAL_SIDE;
import static withy.core.item.Concept.LEADING_LINE;
import static withy.core.item.Concept.LIGHT_CHARACTER;
import static withy.core.item.Concept.LIGHT_RANGE;
import static withy.core.item.Concept.NUMBERING;
import static withy.core.item.Concept.PASSAGE;
import static withy.core.item.Concept.PREFERRED_CHANNEL;
import static withy.core.item.Concept.REGION;
import static withy.core.item.Concept.REGULATORY_MARK;
import static withy.core.item.Concept.SAFE_WATER;
import static withy.core.item.Concept.SPECIAL_MARK;
import static withy.core.item.Form.CHANNEL_CHOICE;
import static withy.core.item.Form.DIRECTION;
import static withy.core.item.Form.LEADING;
import static withy.core.item.Form.SIDE;
import static withy.core.item.Formula.asks;
import static withy.core.item.Formula.clears;
import static withy.core.item.Formula.kind;
import static withy.core.item.Formula.light;
import static withy.core.item.Formula.number;
import static withy.core.item.Formula.of;
import static withy.core.item.Formula.pass;
import static withy.core.item.Formula.passAs;
import static withy.core.item.Formula.range;
import static withy.core.item.Formula.sector;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.mark.Region;
import withy.core.scenario.LightQuestion;
import withy.core.scenario.Scenario;

/**
 * A mistaken belief about navigation marks, as instructors meet them; with it the answers to which
 * it leads. The numbers M01 to M34 are those of the table that the tests hold.
 */
public enum Misconception implements Term {
  /** M01: takes the colours of the other region. */
  REGION_SWAPPED(
      List.of(LATERAL_SIDE, LATERAL_LIGHT, REGION, PREFERRED_CHANNEL, PASSAGE),
      of(SIDE, SideBeliefs::otherRegion),
      of(CHANNEL_CHOICE, ChannelBeliefs::otherRegion),
      kind(KindBeliefs::otherRegion)),
  /** M02: leaves a mark on the same side whichever way the boat travels. */
  DIRECTION_IGNORED(
      List.of(LATERAL_SIDE, LATERAL_LIGHT, PREFERRED_CHANNEL, PASSAGE),
      of(SIDE, SideBeliefs::withBuoyage),
      of(CHANNEL_CHOICE, ChannelBeliefs::withBuoyage)),
  /** M04: lets the shapes swap with the region as the colours do. */
  SHAPE_SWAPPED(
      List.of(LATERAL_SHAPE), of(SIDE, SideBeliefs::shapeSwapped), kind(KindBeliefs::shapeSwapped)),
  /** Does not tell a lateral mark with a band from one without. */
  BAND_OVERLOOKED(
      List.of(REGION, PREFERRED_CHANNEL, PASSAGE),
      of(CHANNEL_CHOICE, ChannelBeliefs::bandOverlooked),
      kind(KindBeliefs::bandOverlooked)),
  /** M05: lets the middle band of a preferred-channel mark decide. */
  MIDDLE_BAND_DECIDES(
      List.of(PREFERRED_CHANNEL, PASSAGE),
      of(CHANNEL_CHOICE, ChannelBeliefs::middleBand),
      kind(KindBeliefs::middleBand)),
  /** M06: takes the side of the channel for the side on which to leave the mark. */
  CHANNEL_NAME_AS_SIDE(
      List.of(PREFERRED_CHANNEL, PASSAGE),
      of(CHANNEL_CHOICE, ChannelBeliefs::channelNameAsSide),
      kind(KindBeliefs::channelNameAsSide)),
  /** M07: takes a port bifurcation buoy for IALA's preferred channel to port. */
  BIFURCATION_NAME_SWAPPED(
      List.of(PREFERRED_CHANNEL, PASSAGE),
      of(CHANNEL_CHOICE, ChannelBeliefs::bifurcationName),
      kind(KindBeliefs::bifurcationName)),
  /** Takes every mark at a junction as if the preferred channel were wanted. */
  INTENT_IGNORED(
      List.of(PREFERRED_CHANNEL, PASSAGE), of(CHANNEL_CHOICE, ChannelBeliefs::intentIgnored)),
  /** Passes a mark at a junction on either side, since there is a channel on both. */
  JUNCTION_EITHER_SIDE(
      List.of(PREFERRED_CHANNEL, PASSAGE), of(CHANNEL_CHOICE, ChannelBeliefs::junctionEitherSide)),
  /** Takes horizontal bands for the sign of a danger. */
  BANDS_MEAN_DANGER(List.of(PREFERRED_CHANNEL), kind(KindBeliefs::bandsMeanDanger)),
  /** M08: takes any red for a lateral mark. */
  RED_MEANS_LATERAL(
      List.of(SAFE_WATER, ISOLATED_DANGER),
      of(SIDE, SideBeliefs::redMeansLateral),
      kind(KindBeliefs::redMeansLateral)),
  /** M09: goes by the colours alone, whether they are stripes or bands. */
  PATTERN_IGNORED(List.of(SAFE_WATER), kind(KindBeliefs::patternIgnored)),
  /** M10: takes two spheres for safe water and one for danger. */
  SPHERES_SWAPPED(
      List.of(SAFE_WATER, ISOLATED_DANGER),
      of(SIDE, SideBeliefs::spheresSwapped),
      kind(KindBeliefs::spheresSwapped)),
  /** Follows on safe-water marks the rule of another country. */
  OTHER_PRACTICE(List.of(SAFE_WATER), of(SIDE, SideBeliefs::otherPractice)),
  /** Takes two topmarks of any shape for a cardinal mark. */
  PAIR_MEANS_CARDINAL(List.of(ISOLATED_DANGER), kind(KindBeliefs::pairMeansCardinal)),
  /** Takes a single topmark that is no cone for a can. */
  SINGLE_MEANS_LATERAL(
      List.of(SAFE_WATER, SPECIAL_MARK, EMERGENCY_WRECK), kind(KindBeliefs::singleMeansLateral)),
  /** M11: takes the name of a cardinal mark for the side of the danger. */
  DANGER_NAMED(
      List.of(CARDINAL_SIDE),
      of(SIDE, SideBeliefs::dangerNamed),
      pass(QuadrantBeliefs::dangerNamed)),
  /** M12: leaves every cardinal mark to port, like a mark of the port hand. */
  CARDINAL_AS_LATERAL(
      List.of(CARDINAL_SIDE),
      of(SIDE, SideBeliefs::cardinalAsLateral),
      pass(QuadrantBeliefs::cardinalAsLateral)),
  /** M13: turns the safe side into the wrong hand, as if heading the other way. */
  HAND_REVERSED(List.of(CARDINAL_SIDE), of(SIDE, SideBeliefs::handReversed)),
  /** Takes a cardinal mark to stand on the danger itself. */
  DANGER_AT_MARK(
      List.of(CARDINAL_SIDE, CLEARANCE),
      of(SIDE, SideBeliefs::dangerAtMark),
      clears(ClearanceBeliefs::anySide)),
  /** M14: swaps the cones of east and west. */
  EAST_WEST_TOPMARKS_SWAPPED(
      List.of(CARDINAL_IDENTITY),
      kind(KindBeliefs::eastWestTopmarks),
      passAs(KindBeliefs::eastWestTopmarks)),
  /** Takes the cones of north and south to point at the danger. */
  CONES_POINT_TO_DANGER(
      List.of(CARDINAL_IDENTITY),
      kind(KindBeliefs::conesPointToDanger),
      passAs(KindBeliefs::conesPointToDanger)),
  /** M15: swaps the colours of north and south. */
  NORTH_SOUTH_COLOURS_SWAPPED(
      List.of(CARDINAL_IDENTITY),
      kind(KindBeliefs::northSouthColours),
      passAs(KindBeliefs::northSouthColours)),
  /** M16: swaps the colours of east and west. */
  EAST_WEST_COLOURS_SWAPPED(
      List.of(CARDINAL_IDENTITY),
      kind(KindBeliefs::eastWestColours),
      passAs(KindBeliefs::eastWestColours)),
  /** Looks only at the upper cone or the uppermost colour of a cardinal mark. */
  UPPER_HALF_ONLY(
      List.of(CARDINAL_IDENTITY), kind(KindBeliefs::upperHalf), passAs(KindBeliefs::upperHalf)),
  /** M17: reads a cardinal light a quarter too early on the face of a clock. */
  CLOCK_FACE_MISREAD(
      List.of(CARDINAL_LIGHT, LIGHT_CHARACTER),
      kind(KindBeliefs::clockFace),
      passAs(KindBeliefs::clockFace),
      light(LightBeliefs::clockFace)),
  /** Counts the cardinal lights the wrong way round the face of a clock. */
  CLOCK_FACE_REVERSED(
      List.of(CARDINAL_LIGHT),
      kind(KindBeliefs::clockReversed),
      passAs(KindBeliefs::clockReversed)),
  /** M18: counts the long flash after six with the others. */
  LONG_FLASH_COUNTED(
      List.of(CARDINAL_LIGHT, LIGHT_CHARACTER),
      kind(KindBeliefs::longFlashCounted),
      light(LightBeliefs::longFlashCounted),
      passAs(KindBeliefs::longFlashCounted)),
  /** Goes by the colour of a light alone, not by its rhythm. */
  RHYTHM_IGNORED(
      List.of(CARDINAL_LIGHT, ISOLATED_DANGER, SAFE_WATER, LATERAL_LIGHT),
      kind(KindBeliefs::rhythmIgnored)),
  /** M19: reads a composite group as one group. */
  COMPOSITE_READ_AS_GROUP(
      List.of(PREFERRED_CHANNEL, LIGHT_CHARACTER),
      of(CHANNEL_CHOICE, ChannelBeliefs::compositeReadAsGroup),
      kind(KindBeliefs::compositeReadAsGroup),
      light(LightBeliefs::compositeReadAsGroup)),
  /** M20: reads eclipses as flashes. */
  OCCULTING_READ_AS_FLASHING(
      List.of(LIGHT_CHARACTER), light(LightBeliefs::occultingReadAsFlashing)),
  /** Reads flashes as eclipses. */
  FLASHING_READ_AS_OCCULTING(
      List.of(LIGHT_CHARACTER), light(LightBeliefs::flashingReadAsOcculting)),
  /** M21: counts the period without the flashes. */
  PERIOD_FROM_DARK(List.of(LIGHT_CHARACTER), light(LightBeliefs::periodFromDark)),
  /** M22: takes the light of an isophase light for its whole period. */
  ISOPHASE_AS_LIGHT_ONLY(List.of(LIGHT_CHARACTER), light(LightBeliefs::isophaseAsLightOnly)),
  /** Does not notice that light and dark are equal. */
  ISOPHASE_READ_AS_OCCULTING(
      List.of(LIGHT_CHARACTER), light(LightBeliefs::isophaseReadAsOcculting)),
  /** Does not notice that a flash is a long one. */
  LONG_FLASH_UNNOTICED(List.of(LIGHT_CHARACTER), light(LightBeliefs::longFlashUnnoticed)),
  /** Takes quick flashes for very quick ones and the reverse (IALA E-110, 2.4). */
  RATE_MISJUDGED(List.of(LIGHT_CHARACTER), light(LightBeliefs::rateMisjudged)),
  /** Takes quick flashes for plain ones. */
  QUICK_READ_AS_FLASHING(List.of(LIGHT_CHARACTER), light(LightBeliefs::quickReadAsFlashing)),
  /** Counts the gaps between flashes in place of the flashes. */
  GAPS_COUNTED(List.of(LIGHT_CHARACTER), light(LightBeliefs::gapsCounted)),
  /** Takes the dots and dashes of a Morse letter for a group of flashes. */
  MORSE_READ_AS_GROUP(List.of(LIGHT_CHARACTER), light(LightBeliefs::morseReadAsGroup)),
  /** Takes very short green flashes for white ones (IALA E-110, section 3). */
  GREEN_TAKEN_FOR_WHITE(List.of(LIGHT_CHARACTER), light(LightBeliefs::greenTakenForWhite)),
  /** Does not count the single flash after a pair. */
  SINGLE_FLASH_UNNOTICED(List.of(LIGHT_CHARACTER), light(LightBeliefs::singleFlashUnnoticed)),
  /** M23: takes yellow for the sign of a cardinal mark. */
  YELLOW_MEANS_CARDINAL(
      List.of(SPECIAL_MARK, EMERGENCY_WRECK, REGULATORY_MARK),
      of(SIDE, SideBeliefs::wreckAsCardinal),
      kind(KindBeliefs::yellowMeansCardinal)),
  /** Takes yellow for the sign of a new danger. */
  YELLOW_MEANS_DANGER(List.of(SPECIAL_MARK), kind(KindBeliefs::yellowMeansDanger)),
  /** Takes a yellow light for a white one (IALA E-110, section 3). */
  YELLOW_TAKEN_FOR_WHITE(
      List.of(SPECIAL_MARK, EMERGENCY_WRECK, LIGHT_CHARACTER),
      kind(KindBeliefs::yellowTakenForWhite),
      light(LightBeliefs::yellowTakenForWhite)),
  /** M24: takes a white light for that of a lateral mark. */
  WHITE_LIGHT_LATERAL(
      List.of(CARDINAL_LIGHT, ISOLATED_DANGER, SAFE_WATER),
      of(SIDE, SideBeliefs::whiteLateral),
      kind(KindBeliefs::whiteLateral)),
  /** Gives every mark a side, like those of a channel. */
  EVERY_MARK_LATERAL(
      List.of(SPECIAL_MARK, EMERGENCY_WRECK, REGULATORY_MARK, FIXED_MARK),
      of(SIDE, SideBeliefs::everyMarkLateral),
      kind(KindBeliefs::everyMarkLateral)),
  /** Confuses the X of a special mark with the upright cross of a wreck. */
  CROSSES_SWAPPED(List.of(SPECIAL_MARK, EMERGENCY_WRECK), kind(KindBeliefs::crossesSwapped)),
  /** M31: follows the general direction along the coast where a local one overrides it. */
  GENERAL_OVER_LOCAL(List.of(BUOYAGE_DIRECTION), of(DIRECTION, DirectionBeliefs::generalOverLocal)),
  /** Takes the arrow of the chart to point towards the open sea. */
  DIRECTION_REVERSED(List.of(BUOYAGE_DIRECTION), of(DIRECTION, DirectionBeliefs::reversed)),
  /** M34: takes blue and yellow stripes, or the yellow of the light, for a special mark. */
  WRECK_TAKEN_FOR_SPECIAL(
      List.of(EMERGENCY_WRECK, LIGHT_CHARACTER),
      of(SIDE, SideBeliefs::wreckTakenForSpecial),
      kind(KindBeliefs::wreckTakenForSpecial),
      light(LightBeliefs::wreckTakenForSpecial)),
  /** Takes any vertical stripes for safe water. */
  STRIPES_MEAN_SAFE_WATER(
      List.of(EMERGENCY_WRECK, REGULATORY_MARK),
      of(SIDE, SideBeliefs::stripesMeanSafeWater),
      kind(KindBeliefs::stripesMeanSafeWater)),
  /** M27: reads the limits of sectors as bearings from the light. */
  SECTOR_FROM_THE_LIGHT(List.of(LIGHT_RANGE), sector(SectorBeliefs::fromTheLight)),
  /** Takes a bearing off the bow for a true one. */
  RELATIVE_READ_AS_TRUE(List.of(LIGHT_RANGE), sector(SectorBeliefs::relativeReadAsTrue)),
  /** Turns a bearing off the bow to the wrong hand. */
  BOW_HAND_SWAPPED(List.of(LIGHT_RANGE), sector(SectorBeliefs::bowHandSwapped)),
  /** Takes the sectors beside a fairway to have the colours of the other region. */
  SECTOR_COLOURS_SWAPPED(List.of(LIGHT_RANGE, REGION), sector(SectorBeliefs::coloursSwapped)),
  /** M28: takes the nominal range for the distance at which a light is seen. */
  NOMINAL_IS_VISIBLE(List.of(LIGHT_RANGE), range(RangeBeliefs::nominalIsVisible)),
  /** M29: counts the distance to the horizon from the light alone. */
  EYE_HEIGHT_IGNORED(List.of(LIGHT_RANGE), range(RangeBeliefs::eyeHeightIgnored)),
  /** Adds the heights before taking the root. */
  HEIGHTS_ADDED_FIRST(List.of(LIGHT_RANGE), range(RangeBeliefs::heightsAddedFirst)),
  /** Takes the coefficient of feet for metres, or the reverse. */
  HEIGHT_UNIT_MIXED(List.of(LIGHT_RANGE), range(RangeBeliefs::heightUnitMixed)),
  /** Takes the nominal range for the luminous one whatever the visibility. */
  VISIBILITY_IGNORED(List.of(LIGHT_RANGE), range(RangeBeliefs::visibilityIgnored)),
  /** Forgets that the light may be below the horizon. */
  HORIZON_IGNORED(List.of(LIGHT_RANGE), range(RangeBeliefs::horizonIgnored)),
  /** Takes a light to be seen as soon as it is above the horizon. */
  POWER_IGNORED(List.of(LIGHT_RANGE), range(RangeBeliefs::powerIgnored)),
  /** Has numbers grow in the order in which the boat meets the marks, also outbound. */
  NUMBERS_AS_MET(List.of(NUMBERING), number(NumberBeliefs::asMet)),
  /** Has numbers grow outward, from the land to the sea. */
  NUMBERS_FROM_THE_LAND(List.of(NUMBERING), number(NumberBeliefs::fromTheLand)),
  /** Gives every mark in turn the next number, of whichever hand it is. */
  NUMBERS_CONSECUTIVE(List.of(NUMBERING), number(NumberBeliefs::consecutive)),
  /** M32: has odd numbers to port in both regions. */
  PARITY_BY_SIDE(List.of(NUMBERING), number(NumberBeliefs::parityBySide)),
  /** Has red odd and green even. */
  PARITY_SWAPPED(List.of(NUMBERING), number(NumberBeliefs::paritySwapped)),
  /** Goes on counting from the marks of the other hand. */
  OTHER_HAND_CONTINUED(List.of(NUMBERING), number(NumberBeliefs::otherHand)),
  /** Gives both marks of a pair one number. */
  PAIR_SHARES_NUMBER(List.of(NUMBERING), number(NumberBeliefs::sameAsPair)),
  /** Counts on along one hand where a number is left out to keep pairs in step. */
  SKIPPED_NUMBER_IGNORED(List.of(NUMBERING), number(NumberBeliefs::skipIgnored)),
  /** M25: steers towards the rear mark of a leading line. */
  STEER_TOWARD_REAR(List.of(LEADING_LINE), of(LEADING, LeadingBeliefs::towardRear)),
  /** M26: steers by leading marks astern as if they were ahead. */
  ASTERN_AS_AHEAD(List.of(LEADING_LINE), of(LEADING, LeadingBeliefs::asternAsAhead)),
  /** Takes leading marks that are a little open for marks in line. */
  SMALL_GAP_IGNORED(List.of(LEADING_LINE), of(LEADING, LeadingBeliefs::gapIgnored)),
  /** Steers by the leading marks nearest the bow, not by the pair that the chart gives. */
  WRONG_LEAD(List.of(LEADING_LINE), of(LEADING, LeadingBeliefs::wrongLead)),
  /** Turns the bow or stern to the leading marks, whether they are in line or not. */
  BOW_ON_MARKS(List.of(LEADING_LINE), of(LEADING, LeadingBeliefs::bowOnMarks)),
  /** Steers further into a cross-stream, whether the leading marks are in line or not. */
  STREAM_OVER_MARKS(List.of(LEADING_LINE), of(LEADING, LeadingBeliefs::intoTheStream)),
  /** M30: passes a mark as close as possible. */
  HUGS_THE_MARK(List.of(CLEARANCE), clears(ClearanceBeliefs::alongside)),
  /** Takes a cable for a hundred metres. */
  CABLE_TAKEN_FOR_HUNDRED_METRES(List.of(CLEARANCE), clears(ClearanceBeliefs::hundreds)),
  /** Takes a danger to be passed as soon as its mark is. */
  DANGER_PASSED_WITH_MARK(List.of(CLEARANCE), clears(ClearanceBeliefs::turnIn)),
  /** Measures to the mark where the danger lies beyond it, or the reverse. */
  MARK_MEASURED_FOR_DANGER(List.of(CLEARANCE), clears(ClearanceBeliefs::toTheOther)),
  /** Obeys every mark, whichever channel it serves, without a look at the soundings. */
  RULE_OVER_CHART(
      List.of(CHART_OVER_RULE),
      of(
          Form.CHART_OVER_RULE,
          scenario -> SideBeliefs.side(scenario, scenario.situation().travel()))),
  /** Takes one orange symbol for another. */
  SYMBOLS_SWAPPED(List.of(REGULATORY_MARK), kind(NationalBeliefs::symbolsSwapped)),
  /** Does not tell a diamond with a cross from one without. */
  CROSS_UNNOTICED(List.of(REGULATORY_MARK), kind(NationalBeliefs::crossUnnoticed)),
  /** Takes any orange for the warning of a danger. */
  ORANGE_MEANS_DANGER(List.of(REGULATORY_MARK), kind(NationalBeliefs::orangeMeansDanger)),
  /** Takes orange on white for mere information. */
  ONLY_INFORMATION(List.of(REGULATORY_MARK), kind(NationalBeliefs::onlyInformation)),
  /** Goes by the colours of the body and overlooks what is painted or set on it. */
  SYMBOL_OVERLOOKED(List.of(REGULATORY_MARK), kind(NationalBeliefs::symbolOverlooked)),
  /** Takes the anchor for the sign of a mooring. */
  ANCHOR_MEANS_MOORING(List.of(REGULATORY_MARK), kind(NationalBeliefs::anchorMeansMooring)),
  /** M35: takes mooring buoys to look the same everywhere. */
  MOORING_OF_ANOTHER_COUNTRY(
      List.of(REGULATORY_MARK), kind(NationalBeliefs::mooringOfAnotherCountry)),
  /** Takes white for the sign of safe water. */
  WHITE_MEANS_SAFE_WATER(
      List.of(REGULATORY_MARK, FIXED_MARK), kind(NationalBeliefs::whiteMeansSafeWater)),
  /** Takes any blue for a new wreck. */
  BLUE_MEANS_WRECK(List.of(REGULATORY_MARK), kind(NationalBeliefs::blueMeansWreck)),
  /** Takes any black for the sign of an isolated danger. */
  BLACK_MEANS_DANGER(List.of(REGULATORY_MARK, FIXED_MARK), kind(NationalBeliefs::blackMeansDanger)),
  /** Takes a red or green board for a lateral one whatever its shape. */
  BOARD_COLOUR_MEANS_LATERAL(
      List.of(REGULATORY_MARK, FIXED_MARK), kind(NationalBeliefs::boardColourMeansLateral)),
  /** Takes a board in sectors for a checkered one, or the reverse. */
  CHECKS_SWAPPED(List.of(FIXED_MARK), kind(NationalBeliefs::checksSwapped)),
  /** Takes every mark that belongs to no channel for the warning of a danger. */
  UNFAMILIAR_MEANS_DANGER(
      List.of(REGULATORY_MARK, FIXED_MARK), kind(NationalBeliefs::unfamiliarMeansDanger)),
  /** Takes orders for advice. */
  ORDER_IS_ADVICE(List.of(REGULATORY_MARK), asks(DemandBeliefs::orderIsAdvice)),
  /** Takes any buoy for one to make fast to. */
  ANY_BUOY_TAKES_A_LINE(
      List.of(REGULATORY_MARK, SPECIAL_MARK, EMERGENCY_WRECK, ISOLATED_DANGER, SAFE_WATER),
      asks(DemandBeliefs::anyBuoyTakesALine)),
  /** Takes mooring to be forbidden where a buoy is laid for it. */
  MOORING_IS_FORBIDDEN(List.of(REGULATORY_MARK), asks(DemandBeliefs::mooringIsForbidden)),
  /** Takes the anchor on a buoy for a ban. */
  ANCHOR_MEANS_FORBIDDEN(List.of(REGULATORY_MARK), asks(DemandBeliefs::anchorMeansForbidden)),
  /** Takes the letters PRIV to keep others out. */
  PRIVATE_MEANS_KEEP_OUT(List.of(REGULATORY_MARK), asks(DemandBeliefs::privateMeansKeepOut)),
  /** Takes a private buoy for one that only its owner need heed. */
  PRIVATE_NEEDS_NO_HEED(List.of(REGULATORY_MARK), asks(DemandBeliefs::privateNeedsNoHeed)),
  /** Takes every board that tells no side to show nothing but the place. */
  BOARDS_ONLY_SHOW_THE_PLACE(List.of(FIXED_MARK), asks(DemandBeliefs::boardsOnlyShowThePlace)),
  /** M33: lets the colour decide where a yellow symbol does. */
  SYMBOL_IGNORED(List.of(FIXED_MARK), of(SIDE, WaterwayBeliefs::symbolIgnored)),
  /** Swaps the yellow triangle and square. */
  WATERWAY_SYMBOLS_SWAPPED(List.of(FIXED_MARK), of(SIDE, WaterwayBeliefs::symbolsSwapped)),
  /** Thinks that a symbol against the colour leaves the side open. */
  CONTRADICTION_CANCELS(List.of(FIXED_MARK), of(SIDE, WaterwayBeliefs::contradictionCancels)),
  /** Takes a yellow band for a symbol of the port hand. */
  BAND_TELLS_SIDE(List.of(FIXED_MARK), of(SIDE, WaterwayBeliefs::bandTellsSide)),
  /** Thinks that a yellow band takes the side from a mark. */
  BAND_CANCELS_SIDE(List.of(FIXED_MARK), of(SIDE, WaterwayBeliefs::bandCancelsSide)),
  /** Swaps one flash and two on the Western Rivers. */
  RIVER_FLASHES_SWAPPED(List.of(LATERAL_LIGHT), of(SIDE, WaterwayBeliefs::flashesSwapped)),
  /** Follows on the Western Rivers the rule of all others that a white light tells no side. */
  WHITE_TELLS_NO_SIDE(List.of(LATERAL_LIGHT), of(SIDE, WaterwayBeliefs::whiteTellsNoSide)),
  /** Takes two white flashes for a danger where there are no such marks. */
  PAIR_MEANS_DANGER(List.of(LATERAL_LIGHT), of(SIDE, WaterwayBeliefs::pairMeansDanger)),
  /** Swaps the brooms with twigs up and down. */
  BROOMS_SWAPPED(
      List.of(FIXED_MARK),
      of(SIDE, WaterwayBeliefs::broomSwapped),
      kind(WaterwayBeliefs::broomsSwapped)),
  /** Takes twigs up or down for the cones of a cardinal mark. */
  BROOM_MEANS_CARDINAL(List.of(FIXED_MARK), kind(WaterwayBeliefs::broomMeansCardinal)),
  /** No known belief explains the option. */
  UNEXPLAINED(List.of());

  private final List<Concept> concepts;
  private final List<Formula> formulas;

  /** Whoever takes a mark for another also takes it to ask what that one does. */
  Misconception(List<Concept> concepts, Formula... formulas) {
    this.concepts = concepts;
    List<Formula> all = new ArrayList<>(List.of(formulas));
    for (Formula each : formulas) {
      if (each.form() == Form.IDENTIFY) {
        all.add(each.asking());
      }
    }
    this.formulas = List.copyOf(all);
  }

  /** The beliefs by which somebody gets a concept wrong, in the order of this list. */
  public static List<Misconception> about(Concept concept) {
    List<Misconception> about = new ArrayList<>();
    for (Misconception each : values()) {
      if (each.concepts.contains(concept)) {
        about.add(each);
      }
    }
    return about;
  }

  /** The concepts that someone who holds this belief has got wrong. */
  public List<Concept> concepts() {
    return concepts;
  }

  /**
   * The value of the option to which this belief leads; empty where it says nothing of the
   * scenario. It may be the right one: two errors can cancel each other.
   */
  public Optional<String> answer(Form form, Scenario scenario) {
    return Optional.ofNullable(answerOrNull(form, scenario));
  }

  @Nullable String answerOrNull(Form form, Scenario scenario) {
    boolean kind = scenario.question() == LightQuestion.MARK;
    Form asked = kind && form == Form.LIGHT ? Form.IDENTIFY : form;
    for (Formula each : formulas) {
      if (each.form() == asked) {
        return each.answer().apply(scenario);
      }
    }
    return null;
  }

  /** What the belief got wrong in a scenario; its words may name the regions. */
  Message mistook(Scenario scenario) {
    Region region = scenario.practice().region();
    return Message.of("mistook." + id(), region, region.other());
  }

  boolean speaksOf(Form form) {
    for (Formula each : formulas) {
      if (each.form() == form) {
        return true;
      }
    }
    return false;
  }
}
