package withy.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import withy.core.light.LightCharacter;
import withy.core.mark.Appearance;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkingRules;
import withy.core.mark.Practice;
import withy.core.mark.Region;

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
    for (Practice practice : new Practice[] {Practice.IALA_A, Practice.IALA_B}) {
      for (MarkKind kind : MarkingRules.kinds(practice)) {
        if (practice.region() == Region.A || kind.isLateral() || kind.isPreferredChannel()) {
          add(pictures, practice, kind);
        }
      }
    }
    return pictures;
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
