package withy.web.pages.instructor;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How often each mark was taken for each other one; marks stand in their families.
 *
 * @param columns the answers
 * @param rows the marks that were shown
 * @param alike which marks are taken for each other both ways, the most alike first
 */
public record ConfusionTableView(List<Mark> columns, List<Row> rows, List<String> alike) {
  /**
   * A mark at the head of a row or a column.
   *
   * @param number the same in both
   * @param begins whether a family begins with it
   */
  public record Mark(String number, String name, boolean begins) {}

  /**
   * What a mark was taken for, a cell for each column.
   *
   * @param all the address of all answers about it
   */
  public record Row(Mark mark, Linked all, List<Cell> cells) {}

  /**
   * How often a mark was given one answer.
   *
   * @param kind {@code absent} where it was never offered, {@code none} where it was never given,
   *     {@code right}, {@code taken}, or {@code listed} where slips do not explain it
   * @param count how often of how many times; empty where it was never offered
   * @param share of the answers for which it was offered; null where it was never given
   */
  public record Cell(String kind, Mark answer, String count, @Nullable Linked share) {}
}
