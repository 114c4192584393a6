package withy.core.item;

import org.jspecify.annotations.Nullable;
import withy.core.mark.MarkGroup;
import withy.core.scenario.TimeOfDay;

/** What someone who names a mark of a group shows to have grasped. */
final class Groups {
  private Groups() {}

  /** The concept of naming such a mark; null where marks of the group are not named by sight. */
  static @Nullable Concept told(MarkGroup group, TimeOfDay time) {
    boolean day = time == TimeOfDay.DAY;
    return switch (group) {
      case LATERAL -> day ? Concept.REGION : Concept.LATERAL_LIGHT;
      case PREFERRED_CHANNEL -> Concept.PREFERRED_CHANNEL;
      case CARDINAL -> day ? Concept.CARDINAL_IDENTITY : Concept.CARDINAL_LIGHT;
      case ISOLATED_DANGER -> Concept.ISOLATED_DANGER;
      case SAFE_WATER -> Concept.SAFE_WATER;
      case SPECIAL -> Concept.SPECIAL_MARK;
      case NEW_DANGER -> Concept.EMERGENCY_WRECK;
      case REGULATORY, LOCAL_USE, NOTICE_BOARD -> day ? Concept.REGULATORY_MARK : null;
      case FIXED, WESTERN_RIVERS, WITHIES -> day ? Concept.FIXED_MARK : null;
      case LEADING, INTRACOASTAL, PRIVATE -> null;
    };
  }

  /**
   * The concept of knowing what such a mark asks of the mariner; null where more than the mark
   * itself decides that, as a heading does.
   */
  static @Nullable Concept asked(MarkGroup group) {
    return switch (group) {
      case ISOLATED_DANGER -> Concept.ISOLATED_DANGER;
      case SAFE_WATER -> Concept.SAFE_WATER;
      case SPECIAL -> Concept.SPECIAL_MARK;
      case NEW_DANGER -> Concept.EMERGENCY_WRECK;
      case REGULATORY, LOCAL_USE, PRIVATE -> Concept.REGULATORY_MARK;
      case NOTICE_BOARD, WESTERN_RIVERS -> Concept.FIXED_MARK;
      case LATERAL, PREFERRED_CHANNEL, CARDINAL, LEADING -> null;
      case FIXED, INTRACOASTAL, WITHIES -> null;
    };
  }
}
