package withy.benchmark;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.GZIPOutputStream;
import withy.core.Chance;
import withy.core.hydrography.Blueprint;
import withy.core.hydrography.WaterGenerator;
import withy.core.mark.Practice;
import withy.core.waterway.Keel;
import withy.core.waterway.Waterway;
import withy.drawing.ChartDrawing;
import withy.drawing.Lettering;

/** How large the chart of a water is when it is sent, gzipped; 60 KB are allowed. */
final class PictureSizes {
  private static final int WATERS = 40;

  private PictureSizes() {}

  static void print() throws IOException {
    for (Blueprint each : Blueprint.values()) {
      List<Integer> sizes = new ArrayList<>();
      for (int seed = 0; seed < WATERS; seed++) {
        Practice practice = Practice.values().get(seed % Practice.values().size());
        Waterway water = WaterGenerator.water(practice, each, Keel.CRUISER, Chance.of(seed, 0));
        sizes.add(compressed(ChartDrawing.of(water, Lettering.ENGLISH).text()));
      }
      sizes.sort(null);
      System.out.printf(
          "chart of %s: median %d, largest %d bytes gzipped%n",
          each.id(), sizes.get(WATERS / 2), sizes.get(WATERS - 1));
    }
  }

  private static int compressed(String text) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (GZIPOutputStream gzip = new GZIPOutputStream(bytes)) {
      gzip.write(text.getBytes(StandardCharsets.UTF_8));
    }
    return bytes.size();
  }
}
