package withy.web.pages.learner;

/**
 * A number to be typed.
 *
 * @param unit its symbol, which stands behind the field
 * @param typed as it was typed when the form is shown again
 */
public record NumberField(String label, String unit, String typed) {}
