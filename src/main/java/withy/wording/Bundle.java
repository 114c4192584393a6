package withy.wording;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;

/**
 * The patterns of one language, each found by its key: those of the language where it has them,
 * else the English ones. The default locale of the machine plays no part, which the bundles of the
 * Java library would let it do.
 */
final class Bundle {
  private static final String BASE = "/messages";
  private final Properties patterns = new Properties();

  private Bundle() {}

  static Bundle of(Locale locale) {
    Bundle bundle = new Bundle();
    for (String suffix : suffixes(locale)) {
      bundle.add(BASE + suffix + ".properties");
    }
    return bundle;
  }

  private static List<String> suffixes(Locale locale) {
    List<String> suffixes = new ArrayList<>(List.of(""));
    if (!locale.getLanguage().isEmpty()) {
      suffixes.add("_" + locale.getLanguage());
    }
    if (!locale.getLanguage().isEmpty() && !locale.getCountry().isEmpty()) {
      suffixes.add("_" + locale.getLanguage() + "_" + locale.getCountry());
    }
    return suffixes;
  }

  private void add(String resource) {
    try (InputStream stream = Bundle.class.getResourceAsStream(resource)) {
      if (stream != null) {
        patterns.load(new InputStreamReader(stream, StandardCharsets.UTF_8));
      }
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + resource, e);
    }
  }

  /**
   * @throws IllegalArgumentException if there is no such key
   */
  String pattern(String key) {
    String pattern = patterns.getProperty(key);
    if (pattern == null) {
      throw new IllegalArgumentException("no words for '" + key + "'");
    }
    return pattern;
  }

  Set<String> keys() {
    return Collections.unmodifiableSet(new TreeSet<>(patterns.stringPropertyNames()));
  }
}
