package withy.drawing;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import withy.core.Chance;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;
import withy.core.hydrography.Blueprint;
import withy.core.hydrography.WaterGenerator;
import withy.core.mark.Practice;
import withy.core.waterway.Keel;
import withy.core.waterway.Sailed;
import withy.core.waterway.Waterway;
import withy.fixture.Waters;

/** Writes charts into {@code target/charts}, each a page of its own, to be looked at. */
final class ChartSheets {
  private static final Keel KEEL = new Keel(1.4, 0.5);

  private ChartSheets() {}

  public static void main(String[] args) throws IOException {
    Path folder = Path.of("target/charts");
    Files.createDirectories(folder);
    for (Map.Entry<String, Svg> each : all().entrySet()) {
      String page =
          "<!doctype html><meta charset='utf-8'><style>body{margin:0;background:#f6f2e9}"
              + "svg{display:block;width:100vw;height:100vh}</style>"
              + each.getValue();
      Files.writeString(folder.resolve(each.getKey() + ".html"), page, StandardCharsets.UTF_8);
    }
  }

  static Map<String, Svg> all() {
    Map<String, Svg> charts = new LinkedHashMap<>();
    waters().forEach((name, water) -> charts.put(name, chart(water, ChartOptions.plain())));
    charts.put("river-tracks", chart(Waters.river(), sailed(Waters.river())));
    charts.put("river-night", chart(Waters.river(), ChartOptions.plain().atNight()));
    charts.put("shoal-bare", chart(Waters.shoal(), ChartOptions.plain().withoutLabels()));
    return charts;
  }

  static Svg chart(Waterway water, ChartOptions options) {
    return ChartDrawing.of(water, Lettering.ENGLISH, options);
  }

  /** The safe way along the fairway, one that grounds, and the boat between. */
  static ChartOptions sailed(Waterway water) {
    Polyline safe = water.fairways().get(0).line();
    List<Position> astray = new ArrayList<>();
    for (double along = 0; along < safe.length(); along += 60) {
      double off = Math.max(0, 230 - Math.abs(along - 900) / 2);
      astray.add(safe.beside(along, off));
    }
    Polyline wrong = new Polyline(astray);
    Sailed sailed = water.sail(wrong, KEEL);
    ChartOptions options = ChartOptions.plain().with(safe, true).with(wrong, false);
    options = options.with(safe.at(330), safe.bearingAt(330));
    Position touched = sailed.ground().orElse(sailed.where());
    return options.touching(touched, water.water(touched));
  }

  /** The waters made by hand, and two of each blueprint. */
  static Map<String, Waterway> waters() {
    Map<String, Waterway> waters = new LinkedHashMap<>();
    waters.put("river", Waters.river());
    waters.put("shoal", Waters.shoal());
    waters.put("rock", Waters.rock());
    for (Blueprint each : Blueprint.values()) {
      for (int seed = 0; seed < 2; seed++) {
        Practice practice = Practice.values().get(seed);
        Chance chance = Chance.of(seed, each.ordinal());
        waters.put(each.id() + "-" + seed, WaterGenerator.water(practice, each, KEEL, chance));
      }
    }
    return waters;
  }
}
