package withy.core.item;

import org.jspecify.annotations.Nullable;
import withy.core.light.LightCharacter;

/**
 * One answer that an item offers.
 *
 * @param value without space or equals sign
 * @param misconception the belief that leads to it; null on the key and there only
 * @param mistook what that belief got wrong here; null on the key and there only
 * @param rhythm the light whose rhythm it stands for; null where it stands for none
 * @param way what becomes of the boat in the water that the scenario has; null on open water
 */
public record Option(
    String value,
    Message text,
    @Nullable Misconception misconception,
    @Nullable Message mistook,
    @Nullable LightCharacter rhythm,
    @Nullable Way way) {
  public Option {
    if (value.isEmpty() || value.indexOf(' ') >= 0 || value.indexOf('=') >= 0) {
      throw new IllegalArgumentException("'" + value + "' cannot be the value of an option");
    }
    if ((misconception == null) != (mistook == null)) {
      throw new IllegalArgumentException("a belief and what it mistook go together");
    }
  }

  /** An option of which the text says all. */
  public Option(
      String value,
      Message text,
      @Nullable Misconception misconception,
      @Nullable Message mistook) {
    this(value, text, misconception, mistook, null, null);
  }

  /** The same option, standing for the rhythm of a light. */
  Option showing(LightCharacter light) {
    return new Option(value, text, misconception, mistook, light, way);
  }

  /** The same option, with what becomes of the boat. */
  Option sailing(Way sailed) {
    return new Option(value, text, misconception, mistook, rhythm, sailed);
  }
}
