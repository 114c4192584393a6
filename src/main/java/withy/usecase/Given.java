package withy.usecase;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** An answer as a learner gives it, before it is known whether the item can be answered so. */
public sealed interface Given {
  /**
   * A word.
   *
   * @param text the token of an option, or a number as it was typed
   */
  record Text(String text) implements Given {}

  /**
   * A part for each feature of a mark, or a side for each mark of a passage.
   *
   * @param tokens of the parts, by the word for the feature; of the sides, by the number of the
   *     mark in the order in which they are met, from 0
   */
  record Parts(Map<String, String> tokens) implements Given {
    public Parts {
      tokens = Collections.unmodifiableMap(new LinkedHashMap<>(tokens));
    }
  }
}
