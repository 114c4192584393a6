package withy.web.pages.instructor;

import java.util.List;
import withy.drawing.Svg;

/** What a class will meet, by one property of its items. */
public record ForeseenGroup(String name, List<Row> rows) {
  /** How many items have a value of the property. */
  public record Row(String name, String items, Svg bar) {}
}
