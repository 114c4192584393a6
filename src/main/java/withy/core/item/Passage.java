package withy.core.item;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import withy.core.Chance;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;

/**
 * Marks are met one after another, and each is left on a side. It is right only when every side is.
 *
 * @param legs in the order in which the boat meets the marks
 * @param way on which she leaves every mark as she should
 * @param beliefs what leads to wrong sides
 */
public record Passage(List<Leg> legs, Way way, List<Belief> beliefs) implements Answer {
  /** Between the sides in the word by which an answer is kept. */
  private static final String JOINT = "/";

  /** So long may the word be. */
  private static final int LONGEST_WORD = 200;

  /** So many marks may there be. */
  public static final int MOST_LEGS = 10;

  /**
   * One mark.
   *
   * @param mark its index among the marks of the scenario
   * @param sides on which it may be left; each option has its own way past it
   */
  public record Leg(int mark, Choice sides) {}

  /**
   * Where a belief leads, applied to every mark.
   *
   * @param sides of each leg in turn; the right one where it says nothing
   * @param mistook what the belief gets wrong here
   */
  public record Belief(List<String> sides, Misconception misconception, Message mistook) {
    public Belief {
      sides = List.copyOf(sides);
    }

    private String word() {
      return String.join(JOINT, sides);
    }
  }

  /**
   * @throws IllegalArgumentException if there are too few legs or too many, two of them about one
   *     mark, an option has no way, or a belief leads to what is right or to sides that are not
   *     offered
   */
  public Passage {
    legs = List.copyOf(legs);
    beliefs = List.copyOf(beliefs);
    requireLegs(legs, way);
    String key = key(legs);
    for (Belief each : beliefs) {
      if (each.word().equals(key) || read(legs, each.word()).isEmpty()) {
        throw new IllegalArgumentException(each + " leads to no wrong sides that are offered");
      }
    }
  }

  private static void requireLegs(List<Leg> legs, Way way) {
    LinkedHashSet<Integer> marks = new LinkedHashSet<>();
    int longest = 0;
    for (Leg leg : legs) {
      marks.add(leg.mark());
      longest += JOINT.length();
      for (Option each : leg.sides().options()) {
        boolean leaves =
            each.way() != null && way.track().points().contains(each.way().track().start());
        if (!leaves || each.value().contains(JOINT)) {
          throw new IllegalArgumentException(each + " is no side to which the right track leads");
        }
      }
      longest += leg.sides().foreseen().stream().mapToInt(String::length).max().orElse(0);
    }
    boolean some = legs.size() >= 2 && legs.size() <= MOST_LEGS;
    if (!some || marks.size() != legs.size() || longest > LONGEST_WORD) {
      throw new IllegalArgumentException("a passage cannot lead past the marks " + marks);
    }
  }

  /**
   * The word by which an answer is kept.
   *
   * @param sides of each leg in turn
   * @throws IllegalArgumentException if a leg has no side, or one that is not offered
   */
  public String word(List<String> sides) {
    String word = String.join(JOINT, sides);
    sides(word);
    return word;
  }

  /**
   * The side given for each leg in turn.
   *
   * @throws IllegalArgumentException if the word can be no answer to the item
   */
  public List<String> sides(String given) {
    return read(legs, given)
        .orElseThrow(() -> new IllegalArgumentException("'" + given + "' has not all its sides"));
  }

  private static Optional<List<String>> read(List<Leg> legs, String given) {
    List<String> sides = List.of(given.split(JOINT, -1));
    boolean fits = sides.size() == legs.size();
    for (int i = 0; fits && i < sides.size(); i++) {
      fits = legs.get(i).sides().accepts(sides.get(i));
    }
    return fits ? Optional.of(sides) : Optional.empty();
  }

  private static String key(List<Leg> legs) {
    return String.join(JOINT, legs.stream().map(each -> each.sides().key()).toList());
  }

  @Override
  public String key() {
    return key(legs);
  }

  @Override
  public boolean accepts(String given) {
    return read(legs, given).isPresent();
  }

  /** The option given for each leg in turn. */
  public List<Option> options(String given) {
    List<String> sides = sides(given);
    return IntStream.range(0, legs.size())
        .mapToObj(i -> legs.get(i).sides().option(sides.get(i)))
        .toList();
  }

  /**
   * Wrong sides are put down to the belief that explains them best, if most of the wrong sides to
   * which it leads were given: one slip, or one hand at every mark, is no belief.
   */
  @Override
  public Grade grade(String given) {
    List<String> sides = sides(given);
    if (given.equals(key())) {
      return Grade.RIGHT;
    }
    @Nullable Belief best = null;
    for (Belief each : beliefs) {
      int more = explained(each, sides) - (best == null ? 0 : explained(best, sides));
      boolean nearer = best != null && more == 0 && missed(each, sides) < missed(best, sides);
      best = isHeld(each, sides) && (more > 0 || nearer) ? each : best;
    }
    return best == null ? Grade.UNEXPLAINED : new Grade(best.misconception(), best.mistook());
  }

  private boolean isHeld(Belief belief, List<String> sides) {
    return 2 * explained(belief, sides) > explained(belief, belief.sides());
  }

  /** How many of the wrong sides the belief leads to. */
  private int explained(Belief belief, List<String> sides) {
    int explained = 0;
    for (int i = 0; i < sides.size(); i++) {
      boolean wrong = !sides.get(i).equals(legs.get(i).sides().key());
      explained += wrong && sides.get(i).equals(belief.sides().get(i)) ? 1 : 0;
    }
    return explained;
  }

  /** How many sides the belief would have had otherwise. */
  private static int missed(Belief belief, List<String> sides) {
    int missed = 0;
    for (int i = 0; i < sides.size(); i++) {
      missed += sides.get(i).equals(belief.sides().get(i)) ? 0 : 1;
    }
    return missed;
  }

  /**
   * The track of a boat that acts on an answer: she leaves every mark as she should up to the first
   * that is left on the wrong side, and sails on from there. Where she touches, only the water
   * tells.
   */
  public Polyline track(String given) {
    List<Position> right = way.track().points();
    for (Option each : options(given)) {
      if (each.misconception() != null) {
        List<Position> wrong = Objects.requireNonNull(each.way()).track().points();
        List<Position> sailed = new ArrayList<>(right.subList(0, right.indexOf(wrong.get(0))));
        sailed.addAll(wrong);
        return new Polyline(sailed);
      }
    }
    return way.track();
  }

  @Override
  public Message text(String given) {
    List<Option> chosen = options(given);
    Message text = text(0, chosen);
    for (int i = 1; i < chosen.size(); i++) {
      text = Message.of("answer.parts", text, text(i, chosen));
    }
    return text;
  }

  private static Message text(int leg, List<Option> chosen) {
    return Message.of("answer.passage." + chosen.get(leg).value(), leg + 1);
  }

  @Override
  public Optional<String> led(Misconception belief) {
    return beliefs.stream()
        .filter(each -> each.misconception() == belief)
        .map(Belief::word)
        .findFirst();
  }

  @Override
  public List<String> foreseen() {
    LinkedHashSet<String> words = new LinkedHashSet<>();
    words.add(key());
    beliefs.forEach(each -> words.add(each.word()));
    return List.copyOf(words);
  }

  /** The marks stay in the order in which they are met, and their sides as they are. */
  @Override
  public Passage shuffled(Chance chance) {
    return this;
  }
}
