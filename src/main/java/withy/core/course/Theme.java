package withy.core.course;

import java.util.List;
import withy.core.Term;
import withy.core.item.Concept;

/**
 * Concepts that are met first on one day, since they are taken for each other: telling similar
 * things apart is learned where they are mixed (Brunmair and Richter 2019, Psychological Bulletin:
 * g .42, the larger the more alike). Which belong together is common practice, no source.
 */
public enum Theme implements Term {
  LATERAL(
      Concept.LATERAL_SIDE,
      Concept.LATERAL_SHAPE,
      Concept.LATERAL_LIGHT,
      Concept.NUMBERING,
      Concept.BUOYAGE_DIRECTION,
      Concept.REGION,
      Concept.PREFERRED_CHANNEL),
  DANGER(
      Concept.CARDINAL_IDENTITY,
      Concept.CARDINAL_SIDE,
      Concept.CARDINAL_LIGHT,
      Concept.ISOLATED_DANGER,
      Concept.EMERGENCY_WRECK),
  OTHER(Concept.SAFE_WATER, Concept.SPECIAL_MARK, Concept.REGULATORY_MARK, Concept.FIXED_MARK),
  CHART(Concept.LEADING_LINE, Concept.CLEARANCE, Concept.CHART_OVER_RULE),
  LIGHT(Concept.LIGHT_CHARACTER, Concept.LIGHT_RANGE),
  VOYAGE(Concept.PASSAGE);

  private final List<Concept> concepts;

  Theme(Concept... concepts) {
    this.concepts = List.of(concepts);
  }

  /** All that belongs to it, in syllabus order. */
  public List<Concept> concepts() {
    return concepts;
  }

  /** The theme that a concept belongs to. */
  public static Theme of(Concept concept) {
    for (Theme each : values()) {
      if (each.concepts.contains(concept)) {
        return each;
      }
    }
    throw new IllegalArgumentException(concept.id() + " belongs to no theme");
  }
}
