package withy.core.item;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.light.LightColour;
import withy.core.light.LightTimeline;
import withy.core.light.Phase;

/** The rhythm of a light in seconds of light and dark, for those who hear or read it. */
final class RhythmWords {
  private static final double MILLIS = 1000;

  private RhythmWords() {}

  /** One period: "In red: 2 times light 0.5 s, dark 1 s; …", or colour by colour by turns. */
  static Message of(LightTimeline timeline) {
    List<Phase> phases = timeline.phases();
    List<LightColour> colours =
        phases.stream().map(Phase::colour).filter(each -> each != null).distinct().toList();
    if (timeline.fixed()) {
      return Message.of("rhythm.steady", colours.get(0));
    }
    return colours.size() > 1
        ? joined(phases.stream().map(RhythmWords::phase).toList())
        : Message.of("rhythm.colour", colours.get(0), joined(pairs(phases)));
  }

  private static Message phase(Phase phase) {
    @Nullable LightColour colour = phase.colour();
    return colour == null
        ? Message.of("rhythm.dark", seconds(phase))
        : Message.of("rhythm.lit", colour, seconds(phase));
  }

  /** Equal flashes with equal eclipses are counted, not repeated. */
  private static List<Message> pairs(List<Phase> phases) {
    List<Message> pairs = new ArrayList<>();
    int at = 0;
    while (at < phases.size()) {
      int times = 1;
      while (same(phases, at, at + 2 * times)) {
        times++;
      }
      pairs.add(pair(phases, at, times));
      at += 2 * times;
    }
    return pairs;
  }

  private static boolean same(List<Phase> phases, int at, int other) {
    return other + 1 < phases.size()
        && phases.get(at).equals(phases.get(other))
        && phases.get(at + 1).equals(phases.get(other + 1));
  }

  private static Message pair(List<Phase> phases, int at, int times) {
    if (at + 1 == phases.size()) {
      boolean dark = phases.get(at).colour() == null;
      return Message.of(dark ? "rhythm.dark" : "rhythm.light", seconds(phases.get(at)));
    }
    boolean lightFirst = phases.get(at).colour() != null;
    Message pair =
        Message.of(
            lightFirst ? "rhythm.light-dark" : "rhythm.dark-light",
            seconds(phases.get(at)),
            seconds(phases.get(at + 1)));
    return times == 1 ? pair : Message.of("rhythm.times", times, pair);
  }

  private static Message joined(List<Message> parts) {
    Message all = parts.get(0);
    for (Message each : parts.subList(1, parts.size())) {
      all = Message.of("rhythm.then", all, each);
    }
    return all;
  }

  private static double seconds(Phase phase) {
    return phase.millis() / MILLIS;
  }
}
