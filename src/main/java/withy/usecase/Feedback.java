package withy.usecase;

import org.jspecify.annotations.Nullable;
import withy.core.item.Grade;
import withy.core.item.Item;
import withy.core.item.Message;
import withy.core.item.Misconception;
import withy.core.response.Response;

/**
 * What a learner is told of an answer, once it is stored.
 *
 * @param key what would have been right, as it would have been given
 * @param mistook what the learner's belief got wrong; null when correct, unexplained or not sure
 * @param chosen the answer given, as the word by which it is kept; null for "not sure"
 */
public record Feedback(
    boolean correct,
    Given key,
    Message keyText,
    Message explanation,
    @Nullable Message mistook,
    @Nullable Misconception misconception,
    IssuedItem issued,
    @Nullable String chosen) {

  static Feedback of(IssuedItem issued, Response response) {
    Item item = issued.item();
    String chosen = response.option();
    Grade grade = chosen == null ? null : item.answer().grade(chosen);
    return new Feedback(
        response.correct(),
        AnswerReading.given(issued, item.key()),
        item.answer().text(item.key()),
        item.explanation(),
        grade == null ? null : grade.mistook(),
        grade == null ? null : grade.misconception(),
        issued,
        chosen);
  }
}
