package withy.usecase;

import java.util.List;
import withy.core.item.Feature;
import withy.core.item.Part;

/**
 * The parts for a feature, and the tokens that stand for them where a learner must not know what
 * they are.
 *
 * @param parts in the order in which they are shown
 */
public record OpaqueSlot(Feature feature, List<OpaquePart> parts) {
  public OpaqueSlot {
    parts = List.copyOf(parts);
  }

  /** A part and the token that stands for it. */
  public record OpaquePart(String token, Part part) {}

  /** The part that a token stands for; refused if it stands for none here. */
  String value(String token) {
    for (OpaquePart each : parts) {
      if (each.token().equals(token)) {
        return each.part().value();
      }
    }
    throw new Refused(Reason.UNKNOWN_OPTION);
  }

  String token(Part part) {
    for (OpaquePart each : parts) {
      if (each.part().equals(part)) {
        return each.token();
      }
    }
    throw new IllegalArgumentException("no part '" + part.value() + "' was issued");
  }
}
