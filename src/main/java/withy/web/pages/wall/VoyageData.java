package withy.web.pages.wall;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import withy.core.geometry.Position;
import withy.core.waterway.Voyage;
import withy.drawing.WallChart;
import withy.web.Json;
import withy.wording.Wording;

/** All that the script needs to run a boat over a chart. */
final class VoyageData {
  private final Wording wording;

  VoyageData(Wording wording) {
    this.wording = wording;
  }

  /** As JSON: places in metres, and how they come to units of the pictures. */
  String of(Stretch stretch, WallChart chart, WallCalls calls, List<String> sides) {
    Voyage voyage = stretch.voyage();
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("scale", rounded(chart.scale()));
    data.put("left", rounded(chart.left()));
    data.put("bottom", rounded(chart.bottom()));
    data.put("between", Voyage.BETWEEN);
    data.put("before", Voyage.BEFORE);
    data.put("fixes", voyage.fixes().stream().map(this::fix).toList());
    List<Object> called = new ArrayList<>();
    for (int i = 0; i < voyage.steps().size(); i++) {
      Voyage.Step step = voyage.steps().get(i);
      CallView said = calls.said(stretch, i);
      Position mark = calls.ringed(stretch, i);
      List<Double> ring = mark == null ? List.of() : List.of(mark.x(), mark.y());
      called.add(List.of(step.fix().along(), said.name(), said.order(), ring, sides.get(i)));
    }
    data.put("steps", called);
    return Json.text(data);
  }

  /** Place, heading in degrees, then heading, water there and least water so far in words. */
  private List<Object> fix(Voyage.Fix fix) {
    return List.of(
        rounded(fix.at().x()),
        rounded(fix.at().y()),
        rounded(fix.heading().degrees()),
        wording.text("page.wall.degrees", fix.heading()),
        metres(fix.water()),
        metres(fix.least()));
  }

  String metres(double water) {
    return wording.text("page.wall.metres", PlaceWords.metres(water));
  }

  private static double rounded(double value) {
    return Double.parseDouble(String.format(Locale.ROOT, "%.3f", value));
  }
}
