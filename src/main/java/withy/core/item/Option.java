package withy.core.item;

import org.jspecify.annotations.Nullable;

/**
 * One answer that an item offers.
 *
 * @param value without space or equals sign
 * @param misconception the belief that leads to it; null on the key and there only
 * @param mistook what that belief got wrong here; null on the key and there only
 */
public record Option(
    String value, Message text, @Nullable Misconception misconception, @Nullable Message mistook) {
  public Option {
    if (value.isEmpty() || value.indexOf(' ') >= 0 || value.indexOf('=') >= 0) {
      throw new IllegalArgumentException("'" + value + "' cannot be the value of an option");
    }
    if ((misconception == null) != (mistook == null)) {
      throw new IllegalArgumentException("a belief and what it mistook go together");
    }
  }
}
