package withy.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.results.Results;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.util.List;
import org.openqa.selenium.JavascriptExecutor;

/** What every page owes everybody, whatever they read it with. */
final class PageCheck {
  private static final List<String> WCAG =
      List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa");

  /** axe passes over a drawing without a name, so this is a rule of our own. */
  private static final String NAMELESS_DRAWINGS =
      """
      return [...document.querySelectorAll('svg')].filter(svg =>
        !svg.parentElement.closest('svg') && !svg.closest('[aria-hidden=true]') && !(svg.getAttribute('role') === 'img'
          && (svg.getAttribute('aria-label') || svg.getAttribute('aria-labelledby')
            || svg.querySelector(':scope > title')?.textContent)))
        .map(svg => svg.outerHTML.slice(0, 200));
      """;

  private static final String SIDEWAYS =
      "const root = document.documentElement; return root.scrollWidth - root.clientWidth;";

  private PageCheck() {}

  /** Nothing that axe finds, on the page as it stands. */
  static void accessible(Window window) {
    Results results = new AxeBuilder().withTags(WCAG).analyze(window.driver());
    assertThat(results.getPasses()).as("axe has read " + window.path()).isNotEmpty();
    assertThat(results.getViolations())
        .as(window.path())
        .extracting(rule -> rule.getId() + " " + rule.getNodes())
        .isEmpty();
    drawn(window);
  }

  /**
   * Every drawing has a name or is none for those who see nothing, and nothing runs off a phone.
   */
  static void drawn(Window window) {
    JavascriptExecutor script = (JavascriptExecutor) window.driver();
    assertThat((List<?>) script.executeScript(NAMELESS_DRAWINGS)).as(window.path()).isEmpty();
    assertThat(script.executeScript(SIDEWAYS)).as("sideways on " + window.path()).isEqualTo(0L);
  }

  /** The same on a laptop and on a phone. */
  static void accessibleEverywhere(Window window) {
    accessible(window);
    window.resize(Window.PHONE);
    drawn(window);
    window.resize(Window.LAPTOP);
  }
}
