package withy.web.pages.evidence;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The answers behind a figure.
 *
 * @param count how many, in words
 * @param about what they have in common, in words
 * @param newest the address of the first page; null on it
 * @param older the address of the next page; null on the last
 */
public record ResponsesView(
    String schoolClass,
    String className,
    String count,
    List<String> about,
    List<Row> rows,
    @Nullable String newest,
    @Nullable String older) {
  /**
   * One answer.
   *
   * @param item the address of the item that it answers
   * @param note what must be known of it; null where that is nothing
   */
  public record Row(
      String item,
      String asked,
      String concept,
      String learner,
      String nickname,
      String said,
      @Nullable String note,
      boolean right,
      String answeredAt) {}
}
