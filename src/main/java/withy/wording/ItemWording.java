package withy.wording;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.item.Item;
import withy.core.item.Message;
import withy.core.item.Option;
import withy.core.item.Passage;
import withy.core.mark.Travel;
import withy.core.scenario.Situation;

/** What a person reads of an item. */
public final class ItemWording {
  private final Wording wording;

  public ItemWording(Wording wording) {
    this.wording = wording;
  }

  /** What is asked, in one or two sentences. */
  public String prompt(Item item) {
    return wording.text(item.prompt());
  }

  /** Words that belong to the item. */
  public String text(Message message) {
    return wording.text(message);
  }

  public String option(Option option) {
    return wording.text(option.text());
  }

  /**
   * A mark of a passage by its place among those that are met, and what is written on it.
   *
   * @param leg from 0
   */
  public String met(Item item, int leg) {
    if (!(item.answer() instanceof Passage passage)) {
      throw new IllegalArgumentException("no passage leads past the marks of " + item.form().id());
    }
    @Nullable String label = item.scenario().marks().get(passage.legs().get(leg).mark()).label();
    return label == null
        ? wording.text("passage.mark", leg + 1)
        : wording.text("passage.mark-labelled", leg + 1, label);
  }

  /** The rule that decides. */
  public String explanation(Item item) {
    return wording.text(item.explanation());
  }

  /** What the belief behind an option got wrong; null for the key. */
  public @Nullable String mistook(Option option) {
    return option.mistook() == null ? null : wording.text(option.mistook());
  }

  /**
   * The situation in short facts: region, heading, with or against, channel wanted, day or night;
   * where a light ashore is asked about, what chart and light list say of it.
   */
  public List<String> facts(Item item) {
    Situation situation = item.scenario().situation();
    if (item.scenario().lookout() != null) {
      return new LookoutFacts(wording).of(item.scenario(), item.scenario().lookout());
    }
    List<String> facts = new ArrayList<>();
    facts.add(wording.text("fact.region", item.scenario().practice().region()));
    if (situation.waters() != null) {
      facts.add(wording.name(situation.waters()));
    }
    if (isSteered(item)) {
      facts.add(wording.text("fact.heading", situation.heading()));
    }
    if (situation.travel() != Travel.NONE && situation.setting() == null) {
      facts.add(wording.text("fact.travel." + situation.travel().id()));
    }
    if (situation.intent() != null) {
      facts.add(wording.text("fact.intent." + situation.intent().id()));
    }
    facts.add(wording.text("fact.time." + situation.time().id()));
    if (item.scenario().sailing() != null) {
      facts.addAll(new SailedWords(wording).facts(item.scenario().sailing()));
    }
    return List.copyOf(facts);
  }

  /**
   * What becomes of the boat in the water on the safe track and on the one chosen; nothing on open
   * water.
   *
   * @param chosen the value of the option chosen; null for "not sure"
   */
  public List<String> sailed(Item item, @Nullable String chosen) {
    return item.scenario().sailing() == null
        ? List.of()
        : new SailedWords(wording).sailed(item, item.scenario().sailing(), chosen);
  }

  /** Whether it matters where the boat heads: not where a mark or a light is looked at alone. */
  private static boolean isSteered(Item item) {
    return switch (item.form()) {
      case IDENTIFY, ASSEMBLE, REGULATORY, LIGHT -> false;
      default -> true;
    };
  }
}
