package withy.core.item;

import java.util.List;

/**
 * Words still to be found in a message bundle: a key and what fills its places.
 *
 * @param arguments numbers, {@link Message}s, {@link withy.core.Term}s, {@link
 *     withy.core.geometry.Bearing}s, lights, of which the phases are said, or text that needs no
 *     translation
 */
public record Message(String key, List<Object> arguments) {
  public Message {
    arguments = List.copyOf(arguments);
  }

  public static Message of(String key, Object... arguments) {
    return new Message(key, List.of(arguments));
  }
}
