package withy.core.light;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.function.ToIntFunction;

/** How the beats of a period fall into groups, and into the dots and dashes of letters. */
final class Grouping {

  private Grouping() {}

  /** Whether a length is clearly longer than another: by half. */
  static boolean clearlyLonger(int length, int other) {
    return 2L * length > 3L * other;
  }

  /**
   * The sizes of the groups that are set apart by clearly longer parts than the shortest, from the
   * one after the longest part on, or the greatest first where no part is clearly the longest;
   * empty when nothing is set apart.
   */
  static List<Integer> groups(List<Beat> beats, ToIntFunction<Beat> part) {
    int longest = Beat.longest(beats, part);
    long between =
        beats.stream().filter(beat -> !clearlyLonger(longest, part.applyAsInt(beat))).count();
    List<Integer> groups = groupsAfterLongest(beats, part);
    return between == groups.size() ? greatestFirst(groups) : groups;
  }

  private static List<Integer> greatestFirst(List<Integer> groups) {
    List<Integer> greatest = new ArrayList<>(groups);
    List<Integer> turned = new ArrayList<>(groups);
    for (int turn = 0; turn < groups.size(); turn++) {
      Collections.rotate(turned, 1);
      if (Arrays.compare(turned.toArray(new Integer[0]), greatest.toArray(new Integer[0])) > 0) {
        greatest = List.copyOf(turned);
      }
    }
    return greatest;
  }

  private static List<Integer> groupsAfterLongest(List<Beat> beats, ToIntFunction<Beat> part) {
    int shortest = Beat.shortest(beats, part);
    List<Integer> groups = new ArrayList<>();
    int size = 0;
    for (Beat beat : Beat.longestLast(beats, part)) {
      size++;
      if (clearlyLonger(part.applyAsInt(beat), shortest)) {
        groups.add(size);
        size = 0;
      }
    }
    return groups;
  }

  /** Whether the beats show these groups, wherever a watcher begins. */
  static boolean shows(List<Beat> beats, ToIntFunction<Beat> part, List<Integer> groups) {
    List<Beat> turned = new ArrayList<>(beats);
    for (int turn = 0; turn < beats.size(); turn++) {
      if (showsFromFirst(turned, part, groups)) {
        return true;
      }
      Collections.rotate(turned, 1);
    }
    return false;
  }

  private static boolean showsFromFirst(
      List<Beat> beats, ToIntFunction<Beat> part, List<Integer> groups) {
    int longestWithin = 0;
    int shortestBetween = Integer.MAX_VALUE;
    int index = 0;
    for (int group : groups) {
      for (int i = 1; i < group; i++) {
        longestWithin = Math.max(longestWithin, part.applyAsInt(beats.get(index++)));
      }
      shortestBetween = Math.min(shortestBetween, part.applyAsInt(beats.get(index++)));
    }
    return clearlyLonger(shortestBetween, longestWithin);
  }

  /** Whether the beats show these letters, wherever a watcher begins, and set them apart. */
  static boolean shows(List<Beat> beats, String letters) {
    String signs = MorseCode.signs(letters);
    if (!mixed(signs) && letters.length() == 1) {
      return beats.size() == signs.length()
          && (beats.size() == 1 || shows(beats, Beat::dark, List.of(beats.size())));
    }
    List<Beat> turned = new ArrayList<>(beats);
    for (int turn = 0; turn < beats.size(); turn++) {
      if (signs.equals(signs(turned, mixed(signs), letters.length() > 1)) && endsApart(turned)) {
        return true;
      }
      Collections.rotate(turned, 1);
    }
    return false;
  }

  private static boolean endsApart(List<Beat> beats) {
    int last = beats.get(beats.size() - 1).dark();
    return last == Beat.longest(beats, Beat::dark)
        && clearlyLonger(last, Beat.shortest(beats, Beat::dark));
  }

  private static boolean mixed(String signs) {
    return signs.indexOf('.') >= 0 && signs.indexOf('-') >= 0;
  }

  /** The letters that the beats show, empty when they show none. */
  static String letters(List<Beat> beats) {
    List<Beat> turned = Beat.longestDarkLast(beats);
    return MorseCode.letters(signs(turned, true, true));
  }

  private static String signs(List<Beat> beats, boolean mixed, boolean several) {
    int shortest = Beat.shortest(beats, Beat::light);
    int longest = Beat.longest(beats, Beat::light);
    if (mixed && longest < 2 * shortest) {
      return "";
    }
    int gap = Beat.shortest(beats, Beat::dark);
    StringBuilder signs = new StringBuilder();
    for (int i = 0; i < beats.size(); i++) {
      Beat beat = beats.get(i);
      signs.append(2 * beat.light() > shortest + longest ? '-' : '.');
      if (several && i < beats.size() - 1 && clearlyLonger(beat.dark(), gap)) {
        signs.append(' ');
      }
    }
    return signs.toString();
  }
}
