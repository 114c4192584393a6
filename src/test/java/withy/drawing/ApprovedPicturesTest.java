package withy.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import withy.core.light.LightCharacter;
import withy.core.mark.Appearance;
import withy.core.mark.MarkDescription;
import withy.core.mark.MarkKind;
import withy.core.mark.Practice;

/**
 * Every kind in every view looks as it was approved. To approve new looks, look at them, then run
 * with {@code -Dwithy.approve=true}.
 */
class ApprovedPicturesTest {
  private static final Path APPROVED = Path.of("src/test/resources/withy/drawing");

  @TestFactory
  Stream<DynamicTest> looksAsApproved() {
    return pictures().entrySet().stream()
        .map(each -> DynamicTest.dynamicTest(each.getKey(), () -> compare(each)));
  }

  @Test
  void approvesNothingThatIsNotDrawn() throws IOException {
    try (Stream<Path> files = Files.list(APPROVED)) {
      assertThat(files.map(each -> each.getFileName().toString()))
          .containsExactlyInAnyOrderElementsOf(pictures().keySet());
    }
  }

  private static void compare(Map.Entry<String, Svg> picture) throws IOException {
    Path file = APPROVED.resolve(picture.getKey());
    String drawn = picture.getValue().text().replace("><", ">\n<") + "\n";
    if (Boolean.getBoolean("withy.approve")) {
      Files.writeString(file, drawn, StandardCharsets.UTF_8);
    }
    assertThat(drawn).isEqualTo(Files.readString(file, StandardCharsets.UTF_8));
  }

  private static Map<String, Svg> pictures() {
    Map<String, Svg> pictures = new LinkedHashMap<>();
    for (MarkKind kind : Practice.IALA_A.kinds()) {
      add(pictures, Practice.IALA_A, kind);
    }
    for (MarkKind kind : Practice.IALA_B.kinds()) {
      if (kind.isLateral() || kind.isPreferredChannel()) {
        add(pictures, Practice.IALA_B, kind);
      }
    }
    Set<Appearance> known = new LinkedHashSet<>(Pictures.looks(Practice.IALA_B));
    addNew(pictures, Practice.IALA_A, known);
    addNew(pictures, Practice.CANADA, known);
    addNew(pictures, Practice.USA, known);
    Scenes.all().forEach((name, svg) -> pictures.put("scene-" + name + ".svg", svg));
    return pictures;
  }

  /** Near views of the marks that look like none before. */
  private static void addNew(Map<String, Svg> pictures, Practice practice, Set<Appearance> known) {
    for (MarkDescription mark : practice.marks()) {
      Appearance look = mark.look().typical();
      if (known.add(look)) {
        pictures.put(practice.id() + "-" + mark.id() + "-near.svg", MarkDrawing.near(look, null));
      }
    }
  }

  private static void add(Map<String, Svg> pictures, Practice practice, MarkKind kind) {
    Appearance look = Pictures.typical(practice, kind);
    String name = practice.id() + "-" + kind.id();
    pictures.put(name + "-near.svg", MarkDrawing.near(look, null));
    pictures.put(name + "-distant.svg", MarkDrawing.distant(look));
    LightCharacter light = look.light();
    if (light != null) {
      pictures.put(name + "-night.svg", MarkDrawing.night(light));
    }
  }
}
