package withy.usecase;

import org.jspecify.annotations.Nullable;
import withy.core.item.Item;
import withy.core.item.Message;
import withy.core.item.Misconception;
import withy.core.item.Option;
import withy.core.response.Response;

/**
 * What a learner is told of an answer, once it is stored.
 *
 * @param keyToken the token of the right option
 * @param mistook what the learner's belief got wrong; null when correct or not sure
 * @param chosen the value of the option given; null for "not sure"
 */
public record Feedback(
    boolean correct,
    String keyToken,
    Message keyText,
    Message explanation,
    @Nullable Message mistook,
    @Nullable Misconception misconception,
    IssuedItem issued,
    @Nullable String chosen) {

  static Feedback of(Issue issue, Item item, Response response) {
    String chosen = response.option();
    Option given = chosen == null ? null : item.option(chosen);
    return new Feedback(
        response.correct(),
        issue.token(item.key()),
        item.option(item.key()).text(),
        item.explanation(),
        given == null ? null : given.mistook(),
        given == null ? null : given.misconception(),
        IssuedItem.of(issue, item),
        chosen);
  }
}
