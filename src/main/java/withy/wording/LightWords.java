package withy.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import withy.core.light.LightCharacter;
import withy.core.light.LightClass;
import withy.core.light.LightColour;
import withy.core.light.LightTimeline;
import withy.core.light.MileSpan;
import withy.core.light.Phase;

/** What a light shows, in words: class, colours, period, phases, and what is assumed of them. */
public final class LightWords {
  private final Wording wording;

  public LightWords(Wording wording) {
    this.wording = wording;
  }

  /** The name of a class of light. */
  public String name(LightClass lightClass) {
    return text("light-class." + lightClass.id());
  }

  /** By what one tells the class. */
  public String definition(LightClass lightClass) {
    return text("light-class." + lightClass.id() + ".says");
  }

  /** The colours of a light; of one with sectors, which of them is shown. */
  public String colours(LightCharacter light) {
    String all = light.colours().stream().map(this::name).collect(Collectors.joining(", "));
    return light.sectored() ? text("light-says.sectors", all, name(light.colour())) : all;
  }

  /** The name of a colour of light. */
  public String name(LightColour colour) {
    return text("light-colour." + colour.id());
  }

  /** The period in seconds. */
  public String period(LightCharacter light) {
    OptionalInt millis = light.timeline().periodMillis();
    return millis.isPresent()
        ? text("light-says.seconds", seconds(millis.getAsInt()))
        : text("light-says.no-period");
  }

  /** What is shown one after the other in a period, alike phases told once with their number. */
  public String phases(LightCharacter light) {
    LightTimeline timeline = light.timeline();
    if (timeline.fixed()) {
      return text("light-says.steady", name(light.colour()));
    }
    List<String> said = new ArrayList<>();
    List<Phase> phases = timeline.phases();
    for (int at = 0; at < phases.size(); ) {
      int alike = alike(phases, at);
      String pair = pair(timeline, at, alike == 1 ? 1 : 2);
      said.add(alike == 1 ? pair : text("light-says.times", alike, pair));
      at += alike == 1 ? 1 : 2 * alike;
    }
    return String.join(text("light-says.then"), said);
  }

  /** How often the phase at a place and the next are repeated from there. */
  private static int alike(List<Phase> phases, int at) {
    int count = 1;
    while (at + 2 * count + 1 < phases.size()
        && phases.get(at).equals(phases.get(at + 2 * count))
        && phases.get(at + 1).equals(phases.get(at + 2 * count + 1))) {
      count++;
    }
    return count;
  }

  private String pair(LightTimeline timeline, int at, int phases) {
    return timeline.phases().subList(at, at + phases).stream()
        .map(each -> phase(timeline, each))
        .collect(Collectors.joining(", "));
  }

  private String phase(LightTimeline timeline, Phase phase) {
    LightColour colour = phase.colour();
    if (colour == null) {
      return text("light-says.dark", seconds(phase.millis()));
    }
    boolean brighter = timeline.phases().stream().anyMatch(Phase::high);
    String key = brighter ? phase.high() ? "bright" : "dim" : "lit";
    return text("light-says." + key, name(colour), seconds(phase.millis()));
  }

  /** What the character left open and this project chose; empty where nothing. */
  public String assumed(LightCharacter light) {
    if (!light.timeline().assumed()) {
      return "";
    }
    boolean period = light.periodMillis().isEmpty() && light.timings().isEmpty();
    return text(period ? "light-says.assumed-period" : "light-says.assumed-lengths");
  }

  /** Elevation and nominal ranges as far as they are stated; empty where neither is. */
  public String seenFrom(LightCharacter light) {
    List<String> said = new ArrayList<>();
    light
        .elevation()
        .ifPresent(
            high ->
                said.add(text("light-says.elevation-" + (high.feet() ? "ft" : "m"), high.value())));
    if (!light.ranges().isEmpty()) {
      light
          .colours()
          .forEach(
              colour ->
                  light.rangeOf(colour).ifPresent(span -> said.add(range(light, colour, span))));
    }
    return String.join(", ", said);
  }

  private String range(LightCharacter light, LightColour colour, MileSpan span) {
    Object miles =
        span.least().compareTo(span.most()) == 0
            ? span.most()
            : text("light-says.between", span.least(), span.most());
    return light.colours().size() > 1
        ? text("light-says.range-of", miles, name(colour))
        : text("light-says.range", miles);
  }

  private Double seconds(int millis) {
    return millis / 1000.0;
  }

  private String text(String key, Object... arguments) {
    return wording.text(key, arguments);
  }
}
