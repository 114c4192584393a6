package withy.core.item;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.Chance;
import withy.core.mark.Appearance;

/**
 * A mark is put together, one part for each slot. It is right only when every part is.
 *
 * @param slots in the order in which they are shown, each of another feature
 * @param parts the right part of each slot, by its value
 * @param beliefs what leads to wrong parts
 */
public record Assembly(List<Slot> slots, Map<Feature, String> parts, List<Belief> beliefs)
    implements Answer {
  /** Between the values of the parts in the word by which an answer is kept. */
  private static final String JOINT = "/";

  /** So long may the word be. */
  private static final int LONGEST_WORD = 200;

  /**
   * Where a belief leads.
   *
   * @param parts the wrong parts to which it leads and, if it matters, right ones with them; other
   *     slots it leaves alone
   * @param mistook what the belief got wrong here
   */
  public record Belief(Map<Feature, String> parts, Misconception misconception, Message mistook) {
    public Belief {
      parts = ordered(parts);
    }
  }

  /**
   * @throws IllegalArgumentException if features repeat, a part is in no slot, a slot has no right
   *     part, or a belief leads to what is right
   */
  public Assembly {
    slots = List.copyOf(slots);
    parts = ordered(parts);
    beliefs = List.copyOf(beliefs);
    requireSlots(slots, parts);
    for (Belief each : beliefs) {
      if (!isOffered(slots, each.parts())
          || parts.entrySet().containsAll(each.parts().entrySet())) {
        throw new IllegalArgumentException(each + " leads to no wrong parts that are offered");
      }
    }
  }

  private static void requireSlots(List<Slot> slots, Map<Feature, String> parts) {
    LinkedHashSet<Feature> features = new LinkedHashSet<>();
    int longest = 0;
    for (Slot each : slots) {
      features.add(each.feature());
      longest += each.longest() + JOINT.length();
    }
    if (slots.isEmpty() || features.size() != slots.size() || longest > LONGEST_WORD) {
      throw new IllegalArgumentException("slots cannot be " + features);
    }
    if (!features.equals(parts.keySet()) || !isOffered(slots, parts)) {
      throw new IllegalArgumentException(parts + " is not the right part of each of " + features);
    }
  }

  private static boolean isOffered(List<Slot> slots, Map<Feature, String> parts) {
    int offered = 0;
    for (Slot each : slots) {
      String value = parts.get(each.feature());
      offered += value != null && each.find(value).isPresent() ? 1 : 0;
    }
    return offered == parts.size();
  }

  private static Map<Feature, String> ordered(Map<Feature, String> parts) {
    return Collections.unmodifiableMap(new LinkedHashMap<>(parts));
  }

  /**
   * The word by which an answer is kept.
   *
   * @param given the value of the part chosen for each slot
   * @throws IllegalArgumentException if a slot has no part, or one that is not offered
   */
  public String word(Map<Feature, String> given) {
    List<String> values = new ArrayList<>(slots.size());
    for (Slot each : slots) {
      values.add(part(each, given).value());
    }
    return String.join(JOINT, values);
  }

  private static Part part(Slot slot, Map<Feature, String> given) {
    return Optional.ofNullable(given.get(slot.feature()))
        .flatMap(slot::find)
        .orElseThrow(
            () ->
                new IllegalArgumentException("no part for " + slot.feature().id() + ": " + given));
  }

  /**
   * The part chosen for each slot, in the order of the slots.
   *
   * @throws IllegalArgumentException if the word can be no answer to the item
   */
  public Map<Feature, Part> parts(String given) {
    return read(given)
        .orElseThrow(() -> new IllegalArgumentException("'" + given + "' has not all its parts"));
  }

  private Optional<Map<Feature, Part>> read(String given) {
    String[] values = given.split(JOINT, -1);
    Map<Feature, Part> read = new LinkedHashMap<>();
    for (int i = 0; i < values.length && values.length == slots.size(); i++) {
      Slot slot = slots.get(i);
      slot.find(values[i]).ifPresent(part -> read.put(slot.feature(), part));
    }
    return read.size() == slots.size() ? Optional.of(read) : Optional.empty();
  }

  @Override
  public String key() {
    return word(parts);
  }

  @Override
  public boolean accepts(String given) {
    return read(given).isPresent();
  }

  /** The wrong parts of an answer, in the order of the slots; empty when it is right. */
  public Map<Feature, Part> wrong(String given) {
    Map<Feature, Part> wrong = new LinkedHashMap<>();
    parts(given)
        .forEach(
            (feature, part) -> {
              if (!part.value().equals(parts.get(feature))) {
                wrong.put(feature, part);
              }
            });
    return wrong;
  }

  /** Wrong parts are put down to the belief that explains them best. */
  @Override
  public Grade grade(String given) {
    return new WrongAssembly(parts(given), wrong(given)).grade(beliefs);
  }

  /**
   * What the parts of an answer look like together; empty where one of them cannot be drawn, or
   * they are no mark together.
   */
  public Optional<Appearance> appearance(String given) {
    Map<Feature, Part> chosen = parts(given);
    @Nullable Appearance mark = null;
    for (Feature each : Feature.values()) {
      @Nullable Part part = chosen.get(each);
      @Nullable Appearance look = part == null ? null : part.look();
      if (part != null && look == null) {
        return Optional.empty();
      }
      mark = look == null ? mark : each.onto(mark == null ? look : mark, look);
    }
    return Optional.ofNullable(mark);
  }

  @Override
  public Message text(String given) {
    @Nullable Message text = null;
    for (Part each : parts(given).values()) {
      text = text == null ? each.text() : Message.of("answer.parts", text, each.text());
    }
    return text == null ? Message.of("answer.parts", "", "") : text;
  }

  /** The right parts but for those to which the belief leads. */
  @Override
  public Optional<String> led(Misconception belief) {
    for (Belief each : beliefs) {
      if (each.misconception() == belief) {
        return Optional.of(led(each));
      }
    }
    return Optional.empty();
  }

  private String led(Belief belief) {
    Map<Feature, String> given = new LinkedHashMap<>(parts);
    given.putAll(belief.parts());
    return word(given);
  }

  @Override
  public List<String> foreseen() {
    List<String> words = new ArrayList<>();
    words.add(key());
    for (Belief each : beliefs) {
      words.add(led(each));
    }
    return words;
  }

  @Override
  public Assembly shuffled(Chance chance) {
    List<Slot> drawn = new ArrayList<>(slots.size());
    for (Slot each : slots) {
      drawn.add(new Slot(each.feature(), chance.shuffled(each.parts())));
    }
    return new Assembly(drawn, parts, beliefs);
  }
}
