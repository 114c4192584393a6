package withy.drawing;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.w3c.dom.Element;
import withy.core.waterway.Contours;

/** Parts of a chart taken out of its picture again. */
final class ChartParts {
  private static final Pattern STEP = Pattern.compile("([Mqtz])([^Mqtz]*)");
  private static final Pattern NUMBER = Pattern.compile("-?[0-9]+");

  private ChartParts() {}

  /** The box round a path or some words, as near as it matters. */
  static Rectangle2D box(Element part) {
    if (part.getTagName().equals("text")) {
      double x = Double.parseDouble(part.getAttribute("x"));
      double y = Double.parseDouble(part.getAttribute("y"));
      boolean middle = part.getAttribute("text-anchor").equals("middle");
      double width = Type.width(part.getTextContent(), 8, false);
      return new Rectangle2D.Double(middle ? x - width / 2 : x, y - 7, width, 8);
    }
    String data = part.getAttribute("d");
    List<Vec> places = data.contains("q") ? points(data) : Extent.points(part);
    return Extent.box(data.endsWith("h0") ? places.subList(0, 1) : places);
  }

  /** Places along the contour of a level as it is drawn: the ends of its pieces. */
  static List<Vec> contour(ChartSheet sheet, double level) {
    return points(ContourPath.of(Contours.shallowerThan(sheet.field(), level), sheet));
  }

  private static List<Vec> points(String data) {
    List<Vec> points = new ArrayList<>();
    int x = 0;
    int y = 0;
    for (MatchResult step : STEP.matcher(data).results().toList()) {
      int[] n =
          NUMBER
              .matcher(step.group(2))
              .results()
              .mapToInt(each -> Integer.parseInt(each.group()))
              .toArray();
      char letter = step.group(1).charAt(0);
      for (int i = letter == 'q' ? 2 : 0; i < n.length; i += letter == 'q' ? 4 : 2) {
        x = letter == 'M' ? n[i] : x + n[i];
        y = letter == 'M' ? n[i + 1] : y + n[i + 1];
        points.add(new Vec(x / 10.0, y / 10.0));
      }
    }
    return points;
  }

  /** The words and figures with their places. */
  static List<String> figures(Svg chart) {
    return Pictures.elements(chart).stream()
        .filter(each -> each.getTagName().equals("text"))
        .map(
            each ->
                each.getTextContent() + " " + each.getAttribute("x") + " " + each.getAttribute("y"))
        .toList();
  }
}
