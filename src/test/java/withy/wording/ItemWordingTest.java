package withy.wording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import withy.core.Term;
import withy.core.geometry.Bearing;
import withy.core.item.Assembly;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Form;
import withy.core.item.Item;
import withy.core.item.ItemGenerator;
import withy.core.item.Message;
import withy.core.item.Misconception;
import withy.core.item.Option;
import withy.core.item.Passage;
import withy.core.mark.MarkDescription;
import withy.core.mark.Practice;
import withy.core.mark.Side;
import withy.core.scenario.View;

/** Every word that an item may need stands in the bundle, and none there is without use. */
class ItemWordingTest {
  private static final Composition ALL = new Composition(List.of(), List.of(), null, 10);
  private static final int SEEDS = 8_000;
  private static final Wording ENGLISH = Wording.of(Locale.ENGLISH);
  private static final ItemWording WORDS = new ItemWording(ENGLISH);
  private static final Pattern PLACE = Pattern.compile("\\{(\\d+)");

  private static final List<Item> ITEMS = drawn();

  /** The prefixes of the keys that belong to items alone. */
  private static final List<String> OURS =
      List.of(
          "junction.",
          "left.",
          "mistook.",
          "option.",
          "part.",
          "prompt.",
          "rule.",
          "travelling.",
          "wanting.");

  @Test
  void namesEveryBeliefThatAReviewMayName() {
    for (Misconception each : Misconception.values()) {
      assertThat(ENGLISH.name(each)).as(each.id()).isNotBlank();
    }
  }

  @Test
  void tellsWhatBecomesOfTheBoatWhateverIsAnswered() {
    int sailed = 0;
    for (Item item : items()) {
      assertThat(WORDS.facts(item)).isNotEmpty();
      for (String answer : item.answer().foreseen()) {
        List<String> told = WORDS.sailed(item, answer);
        sailed += told.size();
        assertThat(told).allSatisfy(each -> assertThat(each).doesNotContain("{"));
      }
    }
    assertThat(sailed).isGreaterThan(100);
  }

  @Test
  void everyWordIsKnownAndEveryKeyUsed() {
    Set<String> used = new TreeSet<>();
    for (Item item : items()) {
      collect(item, used);
    }
    for (Misconception each : Misconception.values()) {
      used.add("mistook." + each.id());
    }
    for (Practice practice : Practice.values()) {
      for (MarkDescription mark : practice.marks()) {
        used.addAll(List.of(mark.nameKey(), mark.lookKey(), mark.meaningKey()));
      }
    }
    Set<String> ours = new TreeSet<>(ENGLISH.keys());
    ours.removeIf(key -> OURS.stream().noneMatch(key::startsWith));
    assertThat(ENGLISH.keys()).containsAll(used);
    assertThat(used).containsAll(ours);
  }

  @Test
  void everyPlaceInAPatternIsFilled() {
    for (Item item : items()) {
      for (Message each : messages(item)) {
        assertPlacesFilled(each);
      }
    }
  }

  @Test
  void sentencesAreShortAndPlain() {
    for (Item item : items()) {
      for (Message each : messages(item)) {
        String text = ENGLISH.text(each);
        boolean list = each.key().equals("option.rhythm"); // phase by phase, no sentence
        assertThat(sentences(text)).as(text).allMatch(said -> list || words(said) <= 20);
        assertThat(text).doesNotContain("{", "}", "null").doesNotContainIgnoringCase("invalid");
      }
    }
  }

  @Test
  void promptsAreOneOrTwoSentences() {
    for (Item item : items()) {
      assertThat(sentences(WORDS.prompt(item))).hasSizeBetween(1, 2);
    }
  }

  @Test
  void bearingsHaveThreeDigits() {
    assertThat(ENGLISH.text("fact.heading", Bearing.of(7))).isEqualTo("Heading 007°");
    assertThat(ENGLISH.text("fact.heading", Bearing.of(359.6))).isEqualTo("Heading 000°");
  }

  @Test
  void numbersFollowTheLanguage() {
    Message iso = Message.of("rule.light.isophase", "Iso W 2.5s", 0, 2.5);
    assertThat(ENGLISH.text(iso)).endsWith("2.5 seconds.");
    assertThat(Wording.of(Locale.FRANCE).text(iso)).endsWith("2,5 seconds.");
  }

  @Test
  void wordsOfTheTradeHaveNames() {
    assertThat(ENGLISH.name(Side.KEEP_CLEAR)).isEqualTo("Keep well clear of it");
    assertThatThrownBy(() -> ENGLISH.text(Message.of("no.such.key")))
        .hasMessage("no words for 'no.such.key'");
  }

  @Test
  void swappedDangerAndSafeWaterAreToldApartByNightToo() {
    List<String> atNight = new ArrayList<>();
    for (Item item : items()) {
      for (Option each : item.options()) {
        if (each.misconception() == Misconception.SPHERES_SWAPPED
            && item.scenario().situation().view() == View.LIGHT) {
          atNight.add(WORDS.mistook(each));
        }
      }
    }
    assertThat(atNight).isNotEmpty().allMatch(text -> text.contains("light that flashes in twos"));
  }

  @Test
  void noWrongDemandIsGrantedByTheExplanation() {
    for (Item item : items()) {
      if (item.form() == Form.REGULATORY) {
        Set<String> granted = runsOfFour(WORDS.explanation(item));
        for (Option each : item.options()) {
          if (each.misconception() != null) {
            assertThat(runsOfFour(WORDS.option(each))).doesNotContainAnyElementsOf(granted);
          }
        }
      }
    }
  }

  private static Set<String> runsOfFour(String text) {
    String[] said = text.toLowerCase(Locale.ROOT).split("\\W+");
    Set<String> runs = new TreeSet<>();
    for (int i = 0; i + 4 <= said.length; i++) {
      runs.add(String.join(" ", List.of(said).subList(i, i + 4)));
    }
    return runs;
  }

  @Test
  void handOfACardinalMarkIsToldToTheOneWhoSteers() {
    Message hand =
        Message.of(
            "rule.cardinal-hand-from-heading",
            "south cardinal mark",
            "south",
            "090°",
            "left to port");
    assertThat(ENGLISH.text(hand))
        .isEqualTo(
            "The safe water lies south of the south cardinal mark."
                + " If you steer 090° on that side, the mark is left to port.");
  }

  @Test
  void factsTellRegionHeadingTravelChannelAndTime() {
    Composition junctions =
        new Composition(
            List.of(), List.of(Term.parse(withy.core.item.Form.class, "channel-choice")), null, 1);
    Item item = ItemGenerator.item(Practice.IALA_B, junctions, 1, 0);
    assertThat(WORDS.facts(item))
        .hasSize(5)
        .startsWith("Region B")
        .anyMatch(each -> each.startsWith("Heading "))
        .anyMatch(each -> each.endsWith(" the buoyage"))
        .anyMatch(each -> each.startsWith("You want the "));
  }

  private static List<Item> items() {
    return ITEMS;
  }

  /** All that is drawn, and more of fixed marks, of which the rarest words are. */
  private static List<Item> drawn() {
    List<Item> items = new ArrayList<>();
    for (Practice practice : Practice.values()) {
      for (int seed = 0; seed < SEEDS / 4; seed++) {
        items.add(ItemGenerator.item(practice, ALL, seed, seed % 5));
      }
      for (int seed = 0; seed < SEEDS / 20; seed++) {
        items.add(ItemGenerator.item(practice, ALL.about(Concept.FIXED_MARK), seed, 0));
      }
    }
    return List.copyOf(items);
  }

  private static List<Message> messages(Item item) {
    List<Message> messages = new ArrayList<>(List.of(item.prompt(), item.explanation()));
    item.options().forEach(each -> addTo(messages, each));
    if (item.answer() instanceof Assembly assembly) {
      assembly.slots().forEach(slot -> slot.parts().forEach(part -> messages.add(part.text())));
      assembly.beliefs().forEach(belief -> messages.add(belief.mistook()));
    }
    if (item.answer() instanceof Passage passage) {
      for (String each : passage.foreseen()) {
        messages.add(passage.text(each));
        passage.options(each).forEach(side -> addTo(messages, side));
      }
    }
    return messages;
  }

  private static void addTo(List<Message> messages, Option option) {
    messages.add(option.text());
    if (option.mistook() != null) {
      messages.add(option.mistook());
    }
  }

  private static void collect(Item item, Set<String> used) {
    messages(item).forEach(each -> collect(each, used));
    assertThat(WORDS.facts(item)).isNotEmpty();
  }

  private static void collect(Message message, Set<String> used) {
    used.add(message.key());
    for (Object each : message.arguments()) {
      if (each instanceof Message inner) {
        collect(inner, used);
      } else if (each instanceof Term term) {
        used.add(Wording.termKey(term));
      }
    }
  }

  private static void assertPlacesFilled(Message message) {
    Matcher places = PLACE.matcher(ENGLISH.pattern(message.key()));
    while (places.find()) {
      assertThat(Integer.parseInt(places.group(1)))
          .as(message.key())
          .isLessThan(message.arguments().size());
    }
  }

  private static List<String> sentences(String text) {
    BreakIterator ends = BreakIterator.getSentenceInstance(Locale.ENGLISH);
    ends.setText(text);
    List<String> sentences = new ArrayList<>();
    int start = ends.first();
    for (int end = ends.next(); end != BreakIterator.DONE; end = ends.next()) {
      sentences.add(text.substring(start, end));
      start = end;
    }
    return sentences;
  }

  private static int words(String sentence) {
    return sentence.trim().split("\\s+").length;
  }
}
