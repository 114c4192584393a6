package withy.core.item;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.Chance;

/**
 * A number is asked for.
 *
 * @param value what is right, in the unit; rounded, so that it can be written in twelve characters
 * @param tolerance how far off an answer may be, both ends included; more than nothing
 * @param beliefs the values to which beliefs lead, none within the tolerance of what is right
 */
public record Quantity(Unit unit, double value, double tolerance, List<Belief> beliefs)
    implements Answer {
  /**
   * Where a belief leads.
   *
   * @param value in the unit of the answer, rounded as the right one is
   * @param mistook what the belief got wrong here
   */
  public record Belief(double value, Misconception misconception, Message mistook) {
    public Belief {
      requireWord(value);
    }

    String word() {
      return TypedNumber.word(value);
    }
  }

  /**
   * @throws IllegalArgumentException if the tolerance is not above nothing, a number is not
   *     rounded, or a belief leads to what is right
   */
  public Quantity {
    requireWord(value);
    beliefs = List.copyOf(beliefs);
    if (!(tolerance > 0 && tolerance < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("a tolerance of " + tolerance);
    }
    for (Belief each : beliefs) {
      if (isNear(BigDecimal.valueOf(each.value()), value, tolerance)) {
        throw new IllegalArgumentException(each + " leads to what is right, " + value);
      }
    }
  }

  /** With those of the beliefs alone that lead to something else than what is right. */
  public static Quantity of(Unit unit, double value, double tolerance, List<Belief> beliefs) {
    List<Belief> wrong = new ArrayList<>(beliefs);
    wrong.removeIf(each -> isNear(BigDecimal.valueOf(each.value()), value, tolerance));
    return new Quantity(unit, value, tolerance, wrong);
  }

  /**
   * What somebody typed, as the word by which the answer is kept: decimal point or comma, with the
   * unit after it or not.
   *
   * @throws UnreadableQuantity if it is no number in the unit
   */
  public String read(String typed) {
    return TypedNumber.word(typed, unit);
  }

  @Override
  public String key() {
    return TypedNumber.word(value);
  }

  @Override
  public boolean accepts(String given) {
    return TypedNumber.read(given).isPresent();
  }

  /**
   * Right within the tolerance; else of the belief whose value is nearest and within the tolerance
   * of the answer, the first of equals.
   */
  @Override
  public Grade grade(String given) {
    BigDecimal number = number(given);
    if (isNear(number, value, tolerance)) {
      return Grade.RIGHT;
    }
    @Nullable Belief nearest = null;
    for (Belief each : beliefs) {
      boolean near = isNear(number, each.value(), tolerance);
      if (near && (nearest == null || off(number, each).compareTo(off(number, nearest)) < 0)) {
        nearest = each;
      }
    }
    return nearest == null
        ? Grade.UNEXPLAINED
        : new Grade(nearest.misconception(), nearest.mistook());
  }

  private static BigDecimal off(BigDecimal number, Belief belief) {
    return number.subtract(BigDecimal.valueOf(belief.value())).abs();
  }

  /** In decimal, so that 20.0 lies within 0.6 of 19.4. */
  private static boolean isNear(BigDecimal number, double value, double tolerance) {
    BigDecimal off = number.subtract(BigDecimal.valueOf(value)).abs();
    return off.compareTo(BigDecimal.valueOf(tolerance)) <= 0;
  }

  private static BigDecimal number(String given) {
    return TypedNumber.read(given)
        .orElseThrow(() -> new IllegalArgumentException("'" + given + "' is no number"));
  }

  private static void requireWord(double value) {
    boolean finite = value > Double.NEGATIVE_INFINITY && value < Double.POSITIVE_INFINITY;
    if (!finite || TypedNumber.read(TypedNumber.word(value)).isEmpty()) {
      throw new IllegalArgumentException(value + " is not rounded for people to read");
    }
  }

  @Override
  public Message text(String given) {
    return Message.of("answer.quantity." + unit.id(), number(given));
  }

  /** What the answer may be off, as a person reads it. */
  public Message toleranceText() {
    return text(TypedNumber.word(tolerance));
  }

  @Override
  public Optional<String> led(Misconception belief) {
    for (Belief each : beliefs) {
      if (each.misconception() == belief) {
        return Optional.of(each.word());
      }
    }
    return Optional.empty();
  }

  @Override
  public List<String> foreseen() {
    List<String> words = new ArrayList<>();
    words.add(key());
    for (Belief each : beliefs) {
      words.add(each.word());
    }
    return words;
  }

  @Override
  public Quantity shuffled(Chance chance) {
    return this;
  }
}
