package withy.web.pages.marks;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import withy.core.Term;
import withy.core.item.Form;
import withy.core.item.Mistake;
import withy.core.item.Mistakes;
import withy.core.light.LightCharacter;
import withy.core.mark.Appearance;
import withy.core.mark.Clause;
import withy.core.mark.MarkDescription;
import withy.core.mark.MarkLook;
import withy.core.mark.Practice;
import withy.core.mark.Quadrant;
import withy.core.mark.Retroreflector;
import withy.web.pages.Fact;
import withy.wording.Wording;

/** What is said of a mark of a practice. */
final class MarkWords {
  private final Wording wording;

  MarkWords(Wording wording) {
    this.wording = wording;
  }

  /** Its name, as a heading has it. */
  String name(MarkDescription mark) {
    return heading(wording.text(mark.nameKey()));
  }

  private String heading(String text) {
    return text.substring(0, 1).toUpperCase(wording.locale()) + text.substring(1);
  }

  /** Its lights in common use. */
  String lights(MarkDescription mark) {
    List<LightCharacter> lights = mark.look().lights();
    return lights.isEmpty()
        ? wording.text("page.mark.unlit")
        : lights.stream().map(LightCharacter::shortNotation).collect(Collectors.joining(", "));
  }

  /** The light under a card: the first, and whether there are others. */
  String firstLight(MarkDescription mark) {
    List<LightCharacter> lights = mark.look().lights();
    return lights.isEmpty() ? wording.text("page.mark.unlit") : lights.get(0).shortNotation();
  }

  /** Everything that is told in a few words under a label. */
  List<Fact> facts(MarkDescription mark) {
    List<Fact> facts = new ArrayList<>();
    facts.add(fact("page.mark.asks", wording.name(mark.demand())));
    facts.add(fact("page.mark.side", wording.name(mark.passing())));
    facts.add(fact("page.mark.look", wording.text(mark.lookKey())));
    facts.add(fact("page.mark.light", lights(mark)));
    facts.add(fact("page.mark.numbering", wording.name(mark.numbering())));
    if (!mark.look().retroreflectors().isEmpty()) {
      facts.add(fact("page.mark.sheeting", sheeting(mark.look())));
    }
    if (mark.waters() != null) {
      facts.add(fact("page.mark.waters", wording.name(mark.waters())));
    }
    if (mark.chartTells()) {
      facts.add(fact("page.mark.told", wording.text("page.mark.chart-tells")));
    }
    return facts;
  }

  private String sheeting(MarkLook look) {
    return look.retroreflectors().stream()
        .map(this::piece)
        .collect(Collectors.joining(wording.text("page.mark.above")));
  }

  private String piece(Retroreflector each) {
    return wording.text("mark-sheeting." + each.shape().id(), each.colour());
  }

  /** How it is built: its body, the structure, and whether the topmark is left out. */
  String shape(Appearance seen, MarkLook look) {
    List<Term> built = new ArrayList<>(List.of(seen.body()));
    if (seen.structure() != null) {
      built.add(seen.structure());
    }
    String said = built.stream().map(wording::name).collect(Collectors.joining(", "));
    boolean bare = seen.topmark() == null && look.topmarkPossible(seen.body());
    return heading(bare ? wording.text("page.mark.bare", said) : said);
  }

  /** What beliefs make of it. */
  List<Fact> mistakes(Practice practice, MarkDescription mark) {
    return Mistakes.over(practice, mark).stream()
        .map(each -> new Fact(heading(wording.name(each.belief())), mistake(practice, each)))
        .toList();
  }

  private String mistake(Practice practice, Mistake mistake) {
    if (mistake.form() == Form.IDENTIFY) {
      return practice.kinds().stream()
          .filter(kind -> kind.id().equals(mistake.value()))
          .flatMap(kind -> practice.mark(kind).stream())
          .map(taken -> wording.text("page.mark.taken-for", wording.text(taken.nameKey())))
          .findFirst()
          .orElse("");
    }
    if (mistake.form() == Form.CARDINAL_PASS) {
      String quadrant = mistake.value().substring("pass-".length());
      return wording.text("page.mark.passes", Term.parse(Quadrant.class, quadrant));
    }
    return side(mistake);
  }

  private String side(Mistake mistake) {
    String side = wording.text("mark-mistake." + mistake.value());
    String travel = wording.text("travelling." + mistake.travel().id());
    return mistake.intent() == null
        ? wording.text("page.mark.led", side, travel)
        : wording.text(
            "page.mark.led-to-channel",
            side,
            travel,
            wording.text("wanting." + mistake.intent().id()));
  }

  /** What a practice says that no mark shows. */
  List<MarksView.Note> notes(Practice practice) {
    return practice.notes().stream()
        .map(each -> new MarksView.Note(wording.text(each.messageKey()), sources(each.sources())))
        .toList();
  }

  /** Where it is laid down. */
  List<MarkView.Source> sources(MarkDescription mark) {
    return sources(mark.clauses());
  }

  private List<MarkView.Source> sources(List<Clause> clauses) {
    return clauses.stream()
        .map(each -> new MarkView.Source(source(each), each.fromMemory()))
        .toList();
  }

  private String source(Clause clause) {
    return wording.text("page.mark.source", clause.document(), clause.edition(), clause.section());
  }

  private Fact fact(String key, String text) {
    return new Fact(wording.text(key), text);
  }
}
