package withy.core.item;

import org.jspecify.annotations.Nullable;

/**
 * What an answer tells.
 *
 * @param misconception the belief that leads to it, {@link Misconception#UNEXPLAINED} where none
 *     does; null when it is right
 * @param mistook what that belief got wrong; null when the answer is right or unexplained
 */
public record Grade(@Nullable Misconception misconception, @Nullable Message mistook) {
  /** Of the right answer. */
  public static final Grade RIGHT = new Grade(null, null);

  /** Of a wrong answer to which no belief leads. */
  public static final Grade UNEXPLAINED = new Grade(Misconception.UNEXPLAINED, null);

  /**
   * @throws IllegalArgumentException if something is mistaken in the right answer
   */
  public Grade {
    if (misconception == null && mistook != null) {
      throw new IllegalArgumentException("the right answer mistakes nothing");
    }
  }

  /** Whether the answer is right. */
  public boolean correct() {
    return misconception == null;
  }
}
