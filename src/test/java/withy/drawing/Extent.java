package withy.drawing;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Where the parts of a picture lie on its paper, outlines not counted. */
final class Extent {
  private static final Pattern STEP = Pattern.compile("([MLQCAZ])([^MLQCAZ]*)");
  private static final Pattern TURN = Pattern.compile("(translate|scale|rotate)\\(([^)]*)\\)");

  private Extent() {}

  /** The box round each path, with its control points, in the units of the outermost element. */
  static List<Rectangle2D> ofPaths(Svg svg) {
    List<Rectangle2D> boxes = new ArrayList<>();
    for (Element each : Pictures.elements(svg)) {
      if (each.getTagName().equals("path")) {
        boxes.add(box(points(each)));
      }
    }
    return boxes;
  }

  /** The corners and control points of a path, moved as its groups say. */
  static List<Vec> points(Element path) {
    AffineTransform moved = transform(path);
    List<Vec> points = new ArrayList<>();
    Matcher steps = STEP.matcher(path.getAttribute("d"));
    while (steps.find()) {
      double[] n = numbers(steps.group(2));
      for (int i = steps.group(1).equals("A") ? 5 : 0; i + 1 < n.length; i += 2) {
        double[] at = {n[i], n[i + 1]};
        moved.transform(at, 0, at, 0, 1);
        points.add(new Vec(at[0], at[1]));
      }
    }
    return points;
  }

  static Rectangle2D box(List<Vec> points) {
    Rectangle2D box = new Rectangle2D.Double(points.get(0).x(), points.get(0).y(), 0, 0);
    points.forEach(each -> box.add(each.x(), each.y()));
    return box;
  }

  private static AffineTransform transform(Node element) {
    AffineTransform all = new AffineTransform();
    for (Node at = element; at instanceof Element here; at = here.getParentNode()) {
      Matcher turns = TURN.matcher(here.getAttribute("transform"));
      AffineTransform own = new AffineTransform();
      while (turns.find()) {
        own.concatenate(turn(turns.group(1), numbers(turns.group(2))));
      }
      all.preConcatenate(own);
    }
    return all;
  }

  private static AffineTransform turn(String kind, double[] n) {
    return switch (kind) {
      case "translate" -> AffineTransform.getTranslateInstance(n[0], n[1]);
      case "scale" -> AffineTransform.getScaleInstance(n[0], n[0]);
      default -> AffineTransform.getRotateInstance(Math.toRadians(n[0]));
    };
  }

  private static double[] numbers(String text) {
    return Pattern.compile("-?[0-9.]+")
        .matcher(text)
        .results()
        .mapToDouble(each -> Double.parseDouble(each.group()))
        .toArray();
  }
}
