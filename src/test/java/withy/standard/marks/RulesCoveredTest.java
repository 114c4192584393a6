package withy.standard.marks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import withy.core.mark.MarkRule;
import withy.standard.Covers;

/** Every clause has a test. */
class RulesCoveredTest {
  @Test
  void leavesNoRuleWithoutATest() throws Exception {
    Set<MarkRule> uncovered = EnumSet.allOf(MarkRule.class);
    for (Class<?> each : testsAgainstStandards()) {
      for (Method method : each.getDeclaredMethods()) {
        Covers covers = method.getAnnotation(Covers.class);
        if (covers != null) {
          uncovered.removeAll(List.of(covers.value()));
        }
      }
    }
    assertThat(uncovered).as("rules that no test covers").isEmpty();
  }

  @Test
  void citesADocumentForEachRule() {
    assertThat(MarkRule.values())
        .allSatisfy(
            rule -> {
              assertThat(rule.clause().document()).isNotBlank();
              assertThat(rule.clause().edition()).isNotBlank();
              assertThat(rule.clause().section()).isNotBlank();
            });
  }

  private static List<Class<?>> testsAgainstStandards() throws Exception {
    Path root = Path.of(Covers.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    List<Class<?>> classes = new ArrayList<>();
    try (Stream<Path> files = Files.walk(root.resolve("withy/standard"))) {
      for (Path file : files.filter(each -> each.toString().endsWith("Test.class")).toList()) {
        String name = root.relativize(file).toString().replace(File.separatorChar, '.');
        classes.add(Class.forName(name.replaceFirst("\\.class$", "")));
      }
    }
    return classes;
  }
}
