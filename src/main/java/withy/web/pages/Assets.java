package withy.web.pages;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.zip.CRC32;

/** The style sheet and the script, and a word that changes when they do. */
final class Assets {
  private static final List<String> FILES = List.of("static/withy.css", "static/withy.js");

  private Assets() {}

  /** Part of every address of an asset, so that a browser may keep it for good. */
  static String version() {
    CRC32 sum = new CRC32();
    for (String each : FILES) {
      sum.update(bytes(each));
    }
    return Long.toHexString(sum.getValue());
  }

  private static byte[] bytes(String name) {
    try (InputStream in = Assets.class.getClassLoader().getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException(name + " is not packed");
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
