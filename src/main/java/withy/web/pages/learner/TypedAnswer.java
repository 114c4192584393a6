package withy.web.pages.learner;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import withy.core.item.Feature;
import withy.core.item.Passage;
import withy.usecase.Given;
import withy.web.pages.Form;

/**
 * What a learner chose or typed on the page of an item.
 *
 * @param option chosen, {@link #NOT_SURE}, or empty
 * @param number as typed; empty where none is asked for or typed
 * @param parts the token of the part chosen for each feature, by its word, or of the side for each
 *     mark of a passage, by its number
 */
record TypedAnswer(String option, String number, Map<String, String> parts) {
  static final String NOT_SURE = "not-sure";

  /** The field of a number. */
  static final String NUMBER = "number";

  /** Nothing yet. */
  static final TypedAnswer NONE = new TypedAnswer("", "", new LinkedHashMap<>());

  TypedAnswer {
    parts = Collections.unmodifiableMap(new LinkedHashMap<>(parts));
  }

  static TypedAnswer of(Form form) {
    Map<String, String> parts = new LinkedHashMap<>();
    for (Feature each : Feature.values()) {
      String token = form.text(field(each.id()));
      if (!token.isEmpty()) {
        parts.put(each.id(), token);
      }
    }
    for (int leg = 0; leg < Passage.MOST_LEGS; leg++) {
      String token = form.text(field(Integer.toString(leg)));
      if (!token.isEmpty()) {
        parts.put(Integer.toString(leg), token);
      }
    }
    return new TypedAnswer(form.text("option"), form.text(NUMBER).strip(), parts);
  }

  /** The field of a feature, by its word, or of a mark of a passage, by its number. */
  static String field(String feature) {
    return "part-" + feature;
  }

  boolean isNothing() {
    return option.isEmpty() && number.isEmpty() && parts.isEmpty();
  }

  boolean isUnsure() {
    return option.equals(NOT_SURE);
  }

  /** Whether a number was typed, and "not sure" ticked as well. */
  boolean saysTwoThings() {
    return isUnsure() && !number.isEmpty();
  }

  /** Null for "not sure", which parts that were chosen before do not change. */
  @Nullable Given given() {
    if (isUnsure()) {
      return null;
    }
    if (!parts.isEmpty()) {
      return new Given.Parts(parts);
    }
    return new Given.Text(number.isEmpty() ? option : number);
  }
}
