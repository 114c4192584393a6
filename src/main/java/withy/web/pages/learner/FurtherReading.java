package withy.web.pages.learner;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import withy.core.item.Form;
import withy.core.item.Item;
import withy.core.light.LightCharacter;
import withy.core.light.LightNotationException;
import withy.core.mark.MarkDescription;
import withy.core.mark.Practice;
import withy.web.pages.Address;
import withy.web.pages.Link;
import withy.web.pages.TakenFor;
import withy.wording.Wording;

/** What to read on in the reference once an item is answered. */
final class FurtherReading {
  private final Wording wording;

  FurtherReading(Wording wording) {
    this.wording = wording;
  }

  /** The mark asked about and the one it was taken for, or the lights of an item about lights. */
  List<Link> of(Item item, @Nullable String chosen) {
    List<Link> links = new ArrayList<>();
    if (item.form() == Form.LIGHT) {
      light(item.key()).ifPresent(shown -> links.add(bench(shown, light(chosen))));
    }
    Practice practice = item.scenario().practice();
    Set<MarkDescription> marks = new LinkedHashSet<>();
    if (!item.scenario().marks().isEmpty()) {
      marks.add(item.scenario().described());
      TakenFor.of(item, chosen).ifPresent(marks::add);
    }
    marks.forEach(mark -> links.add(page(practice, mark)));
    return links;
  }

  private Link page(Practice practice, MarkDescription mark) {
    return Link.to(
        wording.text("page.feedback.more", wording.text(mark.nameKey())),
        "/marks/" + practice.id() + "/" + mark.id());
  }

  /** The light shown, and beside it the one it was taken for. */
  private Link bench(String shown, Optional<String> taken) {
    boolean wrong = taken.isPresent() && !taken.get().equals(shown);
    Address bench = Address.of("/lights").with("a", shown).with("b", wrong ? taken.get() : "");
    String key = wrong ? "page.feedback.both-lights" : "page.feedback.light";
    return Link.to(wording.text(key), bench);
  }

  /** The character that an answer names; empty where it names none. */
  private static Optional<String> light(@Nullable String answer) {
    try {
      return Optional.ofNullable(answer)
          .map(each -> LightCharacter.parse(each.replace('_', ' ')).shortNotation());
    } catch (LightNotationException noCharacter) {
      return Optional.empty();
    }
  }
}
