package withy.core.hydrography;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import withy.core.Chance;
import withy.core.light.LightCharacter;

/**
 * Gives marks their lights: none has the character of one of its two nearest neighbours, whatever
 * their colours, so that a mark can be told by counting. A mark for which the practice has no such
 * character left stays unlit. Leading marks show one character, as they are taken together.
 */
final class MarkLights {
  private static final int NEIGHBOURS = 2;

  private final List<Planned> marks;
  private final Chance chance;
  private final List<@Nullable LightCharacter> lights = new ArrayList<>();

  private MarkLights(List<Planned> marks, Chance chance) {
    this.marks = marks;
    this.chance = chance;
  }

  /** A light or none for each of some marks. */
  static List<@Nullable LightCharacter> of(List<Planned> marks, Chance chance) {
    MarkLights lights = new MarkLights(marks, chance);
    for (int i = 0; i < marks.size(); i++) {
      lights.lights.add(lights.light(i));
    }
    return lights.lights;
  }

  private @Nullable LightCharacter light(int index) {
    List<LightCharacter> usual = marks.get(index).mark().look().lights();
    if (usual.isEmpty()) {
      return null;
    }
    List<LightCharacter> near = near(index);
    if (marks.get(index).mark().kind().isLeading()) {
      return usual.get(0);
    }
    List<LightCharacter> other =
        usual.stream()
            .filter(each -> near.stream().noneMatch(any -> each.rhythm().equals(any.rhythm())))
            .toList();
    List<LightCharacter> unlike =
        usual.stream().filter(each -> near.stream().noneMatch(any -> isLike(each, any))).toList();
    if (unlike.isEmpty()) {
      return null;
    }
    return chance.pick(other.isEmpty() ? unlike : other);
  }

  /** Whether two lights can be told apart by nothing but their colour. */
  static boolean isLike(LightCharacter one, LightCharacter other) {
    return one.rhythm().equals(other.rhythm()) && one.periodMillis().equals(other.periodMillis());
  }

  /** The lights of the marks before it of which either is one of the nearest to the other. */
  private List<LightCharacter> near(int index) {
    List<LightCharacter> near = new ArrayList<>();
    for (int i = 0; i < index; i++) {
      @Nullable LightCharacter light = lights.get(i);
      if (light != null && (nearest(index).contains(i) || nearest(i).contains(index))) {
        near.add(light);
      }
    }
    return near;
  }

  private List<Integer> nearest(int index) {
    return IntStream.range(0, marks.size())
        .filter(i -> i != index)
        .boxed()
        .sorted(Comparator.comparingDouble(i -> marks.get(index).away(marks.get(i))))
        .limit(NEIGHBOURS)
        .toList();
  }
}
