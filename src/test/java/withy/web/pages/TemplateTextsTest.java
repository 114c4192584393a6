package withy.web.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Properties;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What every template keeps to. */
class TemplateTextsTest {
  private static final Path TEMPLATES = Path.of("src/main/resources/templates");
  private static final Path PAGES = Path.of("src/main/java/withy/web/pages");
  private static final Pattern KEY = Pattern.compile("#\\{([a-z0-9.-]+)");

  /** Endings that are put together while a page is written. */
  private static final Pattern MADE =
      Pattern.compile(
          "page\\.(standing\\.(settled|wavering|not-yet)(-note)?"
              + "|review\\.verdict-[a-z-]+|review\\.figure\\.[a-z]+(-says)?"
              + "|error\\.next\\.[a-z-]+|picture\\.[a-z.-]+|feedback\\.(right|wrong)"
              + "|readiness\\.(ready|not-ready|undecided|go-on)|compose\\.(kind|foreseen|short)-[a-z]+"
              + "|compose\\.count(-concepts)?\\.(one|many)"
              + "|assignment\\.(stand-[a-z-]+|key|answer|unsure)|item\\.place(-at-most)?"
              + "|plan\\.why-[a-z]+|(why|next)\\.[a-z-]+(\\.(one|many))?"
              + "|class(\\.size|es\\.answered)\\.(none|one|many)"
              + "|review\\.silence-(worse|better)|review\\.telling-by\\.(none|one|many)"
              + "|kind\\.((base|unjudged)\\.(none|one|many)|figure\\.[a-z]+(-says)?"
              + "|(separation|work)-[a-z-]+)"
              + "|responses\\.(count\\.(none|one|many)|which-[a-z]+))");

  @Test
  void everyTextThatATemplateAsksForExists() {
    Properties texts = texts();
    SortedSet<String> asked = new TreeSet<>();
    for (Path each : files(TEMPLATES, ".html")) {
      Matcher keys = KEY.matcher(read(each));
      while (keys.find()) {
        asked.add(keys.group(1));
      }
    }
    assertThat(asked).isNotEmpty();
    assertThat(texts.stringPropertyNames()).containsAll(asked);
  }

  @Test
  void everyTextOfThePagesIsAskedFor() {
    StringBuilder sources = new StringBuilder();
    files(TEMPLATES, ".html").forEach(each -> sources.append(read(each)));
    files(PAGES, ".java").forEach(each -> sources.append(read(each)));
    String all = sources.toString();
    for (String key : texts().stringPropertyNames()) {
      if (key.startsWith("page.") && !MADE.matcher(key).matches()) {
        String shortened = key.substring("page.".length());
        String last = shortened.substring(shortened.indexOf('.') + 1);
        boolean drills = key.startsWith("page.drills.") && all.contains("\"" + last + "\"");
        assertThat(drills || all.contains(key) || all.contains("\"" + shortened + "\""))
            .as(key)
            .isTrue();
      }
    }
  }

  @Test
  void onlyOneFragmentPutsInTextUnescaped() {
    long raw =
        files(TEMPLATES, ".html").stream()
            .map(TemplateTextsTest::read)
            .mapToLong(text -> text.split("utext|\\[\\(|__\\$", -1).length - 1)
            .sum();
    assertThat(raw).isOne();
    assertThat(read(TEMPLATES.resolve("fragments/picture.html")))
        .contains("th:utext=\"${picture.text}\"");
  }

  @Test
  void noTemplateHoldsStyleOrScriptOfItsOwn() {
    for (Path each : files(TEMPLATES, ".html")) {
      assertThat(read(each))
          .as(each.toString())
          .doesNotContain("style=", "th:style", "<style", " onclick", "th:onclick", "maximum-scale")
          .doesNotContainPattern("<script(?![^>]*th:src)")
          .doesNotContainPattern("(href|src|action)=\"https?:");
    }
  }

  private static Properties texts() {
    Properties texts = new Properties();
    try (var in = Files.newBufferedReader(Path.of("src/main/resources/messages.properties"))) {
      texts.load(in);
      return texts;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Path> files(Path folder, String ending) {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(each -> each.toString().endsWith(ending)).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
