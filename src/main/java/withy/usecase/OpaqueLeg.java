package withy.usecase;

import java.util.List;
import withy.core.item.Passage;

/**
 * A mark of a passage, and the tokens that stand for its sides where a learner must not know what
 * they are.
 *
 * @param number in the order in which the boat meets the marks, from 0
 * @param sides in the order in which they are shown
 */
public record OpaqueLeg(int number, Passage.Leg leg, List<OpaqueOption> sides) {
  public OpaqueLeg {
    sides = List.copyOf(sides);
  }

  /** By which an answer names it. */
  public String name() {
    return Integer.toString(number);
  }

  /** The side that a token stands for; refused if it stands for none here. */
  String value(String token) {
    for (OpaqueOption each : sides) {
      if (each.token().equals(token)) {
        return each.option().value();
      }
    }
    throw new Refused(Reason.UNKNOWN_OPTION);
  }

  String token(String side) {
    for (OpaqueOption each : sides) {
      if (each.option().value().equals(side)) {
        return each.token();
      }
    }
    throw new IllegalArgumentException("no side '" + side + "' was issued");
  }
}
