package withy.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.BindException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.WebElement;
import withy.InProcessServer;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Form;
import withy.core.item.Item;
import withy.core.item.ItemGenerator;
import withy.core.mark.Practice;
import withy.core.scenario.RangeLookout;
import withy.core.scenario.Scenario;
import withy.usecase.InstructorCaller;
import withy.usecase.SchoolClass;
import withy.usecase.UseCases;
import withy.web.pages.ItemPictures;

/** Items of every form, each way in which it is asked, and what is told of them, on a phone. */
class EveryFormOnAPhoneIT {
  private static final String PASSWORD = "a long walk on the pier";

  /** Items drawn of a form in search of all its ways. */
  private static final int DRAWN = 60;

  /** The share of a phone's height in which the picture ends, in hundredths. */
  private static final String PICTURE_ENDS =
      """
      const picture = document.querySelector('main.item .picture');
      return picture ? Math.round(100 * picture.getBoundingClientRect().bottom / innerHeight) : 0;
      """;

  /** A chart has small words in it and is as wide as the phone; in hundredths as well. */
  private static final int CHART_ENDS = 60;

  private static final String LOW_ROWS =
      """
      return [...document.querySelectorAll('.row')].filter(row => row.offsetHeight < 48)
        .map(row => row.textContent);
      """;

  /** Keys of messages, places left open in them, and words that only files know. */
  private static final String UNWORDED =
      "return document.querySelector('main').innerText"
          + ".match(/[a-z-]+\\.[a-z-]+\\.[a-z-]+|\\{[0-9]|[a-z]+_[a-z]+|\\bnull\\b/g) || [];";

  private static final String SMALL_TOPMARKS =
      """
      return [...document.querySelectorAll('[name="part-topmark"]')]
        .map(input => input.closest('.row').querySelector('svg > g').getBoundingClientRect().height)
        .filter(height => height < 24);
      """;

  @TempDir private Path folder;

  @Test
  void everyWayOfAskingIsFitForAPhone() throws BindException {
    List<Item> items = everyWay();
    assertThat(items).hasSizeGreaterThan(Form.values().length);
    try (InProcessServer server =
            InProcessServer.on(folder, (practice, composition, seed, i) -> items.get(i));
        Window phone = Window.open(server.port(), Window.PHONE)) {
      phone.go("/join/" + classWithDrill(server.useCases(), items.size()));
      phone.type("nickname", "Tern");
      phone.follow("form[action='/join'] button");
      phone.go("/drills");
      phone.follow(".drills a");
      Set<Form> forms = EnumSet.noneOf(Form.class);
      for (Item each : items) {
        asked(phone, each);
        told(phone, each, forms.add(each.form()));
      }
      assertThat(phone.has("main.item")).isFalse();
    }
  }

  private static void asked(Window phone, Item item) {
    phone.see("main.item");
    PageCheck.accessible(phone);
    String what = way(item);
    int most = ItemPictures.isChart(item) ? CHART_ENDS : 45;
    assertThat(((Number) run(phone, PICTURE_ENDS)).intValue()).as(what).isLessThanOrEqualTo(most);
    assertThat((List<?>) run(phone, LOW_ROWS)).as(what).isEmpty();
    assertThat((List<?>) run(phone, UNWORDED)).as(what).isEmpty();
    assertThat((List<?>) run(phone, SMALL_TOPMARKS)).as(what).isEmpty();
    if (phone.has(".light-switch a")) {
      phone.follow(".light-switch a");
      PageCheck.drawn(phone);
      assertThat(phone.text(".light-switch")).as(what).isEqualTo("Let it flash");
    }
  }

  private static void told(Window phone, Item item, boolean first) {
    if (phone.has("#number")) {
      phone.type("number", "1");
    }
    for (WebElement each : phone.driver().findElements(By.cssSelector(".options"))) {
      each.findElement(By.cssSelector(".row")).click();
    }
    phone.follow("form.answer button");
    phone.see("main.feedback");
    if (first) {
      PageCheck.accessible(phone);
    } else {
      PageCheck.drawn(phone);
    }
    assertThat((List<?>) run(phone, UNWORDED)).as("told of " + way(item)).isEmpty();
    phone.follow(".next a");
  }

  private static Object run(Window window, String script) {
    return ((JavascriptExecutor) window.driver()).executeScript(script);
  }

  private static String classWithDrill(UseCases cases, int length) {
    cases.setUp().setUp(cases.setUp().code(), "Marlo", PASSWORD);
    var marlo = (InstructorCaller) cases.signIn().signIn("Marlo", PASSWORD).caller();
    SchoolClass opened = cases.openClass().open(marlo, "Tuesday", Practice.CANADA);
    Composition one = new Composition(List.of(Concept.LATERAL_SIDE), List.of(), null, length);
    cases.assignDrill().assign(marlo, opened.id(), "Every form", one, null);
    return opened.code();
  }

  /** One item for each way in which some form asks. */
  private static List<Item> everyWay() {
    Map<String, Item> ways = new LinkedHashMap<>();
    for (Form form : Form.values()) {
      Composition only = new Composition(List.of(), List.of(form), null, DRAWN);
      for (int i = 0; i < DRAWN; i++) {
        Practice practice =
            i % 2 == 0 || form == Form.CARDINAL_PASS ? Practice.CANADA : Practice.USA;
        Item item = ItemGenerator.item(practice, only, 5, i);
        ways.putIfAbsent(way(item), at(ways.size(), item));
      }
    }
    return new ArrayList<>(ways.values());
  }

  /** The same item at the place where the drill of one concept asks for it. */
  private static Item at(int index, Item item) {
    return new Item(
        item.form(),
        item.seed(),
        index,
        item.concepts(),
        item.scenario(),
        item.prompt(),
        item.answer(),
        item.explanation());
  }

  private static String way(Item item) {
    Scenario scenario = item.scenario();
    List<Object> way = new ArrayList<>();
    way.add(item.form());
    way.add(scenario.situation().view());
    if (scenario.question() != null) {
      way.add(scenario.question());
    }
    if (scenario.situation().waters() != null) {
      way.add(scenario.situation().waters());
    }
    if (scenario.lookout() != null) {
      way.add(scenario.lookout().getClass().getSimpleName());
      way.add(scenario.lookout() instanceof RangeLookout range && range.visibility() != null);
    }
    if (item.form() == Form.LEADING) {
      way.add(scenario.marks().size());
    }
    return way.toString();
  }
}
