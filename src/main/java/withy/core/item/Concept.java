package withy.core.item;

import java.util.EnumSet;
import java.util.Set;
import withy.core.Term;

/** What an item measures, in the words of the syllabus. */
public enum Concept implements Term {
  LATERAL_SIDE,
  LATERAL_SHAPE,
  LATERAL_LIGHT,
  NUMBERING,
  BUOYAGE_DIRECTION,
  REGION,
  PREFERRED_CHANNEL,
  CARDINAL_IDENTITY,
  CARDINAL_SIDE,
  CARDINAL_LIGHT,
  ISOLATED_DANGER,
  SAFE_WATER,
  SPECIAL_MARK,
  EMERGENCY_WRECK,
  REGULATORY_MARK,
  FIXED_MARK,
  LEADING_LINE,
  CLEARANCE,
  CHART_OVER_RULE,
  LIGHT_CHARACTER,
  LIGHT_RANGE,
  PASSAGE;

  private static final Set<Concept> SAFETY_CRITICAL =
      EnumSet.of(
          LATERAL_SIDE,
          BUOYAGE_DIRECTION,
          REGION,
          PREFERRED_CHANNEL,
          CARDINAL_SIDE,
          ISOLATED_DANGER,
          EMERGENCY_WRECK,
          LEADING_LINE,
          CLEARANCE,
          CHART_OVER_RULE,
          PASSAGE);

  /**
   * Whether an error about it puts the boat itself on the danger: these decide where she goes, the
   * others what a mark is called or how it shows. Common practice, no source.
   */
  public boolean isSafetyCritical() {
    return SAFETY_CRITICAL.contains(this);
  }
}
