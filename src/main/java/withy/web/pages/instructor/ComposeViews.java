package withy.web.pages.instructor;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import withy.core.hydrography.SurveyedWater;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Difficulty;
import withy.core.item.Form;
import withy.core.mark.Practice;
import withy.core.response.DrillKind;
import withy.core.scenario.TimeOfDay;
import withy.drawing.Svg;
import withy.usecase.ComposeDrill;
import withy.usecase.ComposeDrill.Share;
import withy.usecase.ForeseeDrill;
import withy.usecase.ForeseeDrill.Foreseen;
import withy.usecase.KeepDrillSet;
import withy.usecase.ListWaters.Listed;
import withy.usecase.Reason;
import withy.usecase.Refused;
import withy.usecase.SchoolClass;
import withy.web.pages.ItemPictures;
import withy.web.pages.PageRenderer;

/** Puts a drill that is being composed into words and pictures. */
final class ComposeViews {
  private static final Composition ALL = new Composition(List.of(), List.of(), null, 1);
  private static final int SPECIMENS = 6;

  /** So many at least, so that one concept is seen from several sides. */
  private static final int FEW = 4;

  private static final long PICTURE_SEED = 1;

  private final PageRenderer pages;
  private final Phrases phrases;
  private final ComposeDrill composeDrill;
  private final ForeseeDrill foreseeDrill;
  private final ForeseenViews foreseenViews;
  private final ComposeGroups groups;
  private final Specimens specimens;
  private final ItemPictures pictures;
  private final Map<Practice, Map<Concept, Svg>> small = new ConcurrentHashMap<>();

  ComposeViews(PageRenderer pages, ComposeDrill composeDrill, ForeseeDrill foreseeDrill) {
    this.pages = pages;
    this.phrases = new Phrases(pages.wording());
    this.composeDrill = composeDrill;
    this.foreseeDrill = foreseeDrill;
    this.foreseenViews = new ForeseenViews(phrases);
    this.groups = new ComposeGroups(phrases, pages.days());
    this.specimens = new Specimens(pages.wording());
    this.pictures = new ItemPictures(pages.wording());
  }

  ComposeView view(
      SchoolClass schoolClass,
      List<KeepDrillSet.Listed> drillSets,
      List<Listed> waters,
      Draft draft,
      @Nullable String why) {
    Practice own = draft.practice();
    Practice practice = own == null ? schoolClass.practice() : own;
    List<Share> shares =
        draft.composition().map(each -> composeDrill.shares(practice, each)).orElse(List.of());
    List<Specimen> sample =
        draft.composition().map(each -> sample(practice, each, shares, draft)).orElse(List.of());
    Foreseen foreseen =
        shares.isEmpty()
            ? null
            : draft.composition().map(each -> foresee(practice, each, draft)).orElse(null);
    List<Choice> forms = forms(practice, draft);
    List<Choice> times = times(draft);
    return new ComposeView(
        schoolClass.id(),
        schoolClass.name(),
        why,
        draft.turn(),
        DrillSetChoices.few(drillSets, practice),
        concepts(practice, draft),
        forms,
        times,
        waters(waters, draft),
        draft.length(),
        Composition.LONGEST,
        draft.title(),
        draft.due(),
        phrases.text("compose.due-hint", pages.days().zone()),
        kinds(draft),
        draft.opens(),
        practices(schoolClass.practice(), draft),
        difficulties(draft),
        groups.count(draft, shares.size()),
        groups.forms(forms),
        groups.where(draft, times),
        groups.how(draft),
        says(draft, sample),
        draft.seed(),
        foreseen == null ? "" : foreseenViews.says(foreseen, draft.kind()),
        foreseen == null ? List.of() : foreseenViews.groups(foreseen),
        sample);
  }

  /**
   * One item on each concept, or several where concepts are few; the next few each time a sample is
   * asked for.
   */
  private List<Specimen> sample(
      Practice practice, Composition composition, List<Share> shares, Draft draft) {
    int count = shares.isEmpty() ? 0 : Math.min(SPECIMENS, Math.max(FEW, shares.size()));
    List<Specimen> sample = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      long next = draft.turn() * count + i;
      Concept concept = shares.get(Math.floorMod(next, shares.size())).concept();
      long seed = Math.floorDiv(next, shares.size());
      sample.add(specimens.of(composeDrill.specimen(practice, composition, concept, seed)));
    }
    return sample;
  }

  /** Of a draft that is to be mended first nobody knows yet what it allows. */
  private String says(Draft draft, List<Specimen> sample) {
    if (draft.composition().isEmpty()) {
      return phrases.text("compose.sample-unknown");
    }
    return phrases.text(sample.isEmpty() ? "compose.sample-none" : "compose.sample-says");
  }

  /** Null of a rehearsal for which no passage is chosen yet. */
  private @Nullable Foreseen foresee(Practice practice, Composition composition, Draft draft) {
    try {
      return foreseeDrill.of(practice, composition, draft.kind(), draft.seed());
    } catch (Refused refused) {
      if (refused.reason() == Reason.NO_PASSAGE) {
        return null;
      }
      throw refused;
    }
  }

  private List<Choice> concepts(Practice practice, Draft draft) {
    Map<Concept, Svg> drawn = small.computeIfAbsent(practice, this::drawn);
    return composeDrill.measurable(practice, ALL).stream()
        .map(each -> concept(each, draft, drawn.get(each)))
        .toList();
  }

  private List<Choice> kinds(Draft draft) {
    return Stream.of(DrillKind.values())
        .map(
            each ->
                new Choice(
                    each.id(),
                    phrases.text("compose.kind-" + each.id()),
                    each == draft.kind(),
                    null))
        .toList();
  }

  private List<Choice> practices(Practice ofClass, Draft draft) {
    List<Choice> practices = new ArrayList<>();
    String usual = phrases.text("compose.practice-of-class", phrases.name(ofClass));
    practices.add(new Choice("", usual, draft.practice() == null, null));
    for (Practice each : Practice.values()) {
      if (!each.equals(ofClass) || each.equals(draft.practice())) {
        practices.add(Choice.of(each, phrases.name(each), each.equals(draft.practice())));
      }
    }
    return practices;
  }

  private List<Choice> difficulties(Draft draft) {
    List<Choice> difficulties = new ArrayList<>();
    String any = phrases.text("compose.any-difficulty");
    difficulties.add(new Choice("", any, draft.difficulty() == null, null));
    for (Difficulty each : Difficulty.values()) {
      difficulties.add(Choice.of(each, phrases.name(each), each == draft.difficulty()));
    }
    return difficulties;
  }

  private Choice concept(Concept concept, Draft draft, @Nullable Svg picture) {
    boolean chosen = draft.concepts().contains(concept.id());
    return new Choice(concept.id(), phrases.name(concept), chosen, picture);
  }

  private Map<Concept, Svg> drawn(Practice practice) {
    Map<Concept, Svg> drawn = new LinkedHashMap<>();
    for (Concept each : composeDrill.measurable(practice, ALL)) {
      drawn.put(each, pictures.small(composeDrill.specimen(practice, ALL, each, PICTURE_SEED)));
    }
    return drawn;
  }

  private List<Choice> forms(Practice practice, Draft draft) {
    return Arrays.stream(Form.values())
        .filter(each -> !composeDrill.measurable(practice, only(each)).isEmpty())
        .map(each -> Choice.of(each, phrases.name(each), draft.forms().contains(each.id())))
        .toList();
  }

  private static Composition only(Form form) {
    return new Composition(List.of(), List.of(form), null, 1);
  }

  private List<Choice> times(Draft draft) {
    List<Choice> times = new ArrayList<>();
    for (TimeOfDay each : TimeOfDay.values()) {
      times.add(Choice.of(each, phrases.name(each), each.id().equals(draft.time())));
    }
    boolean both = Draft.BOTH.equals(draft.time());
    times.add(new Choice(Draft.BOTH, phrases.text("compose.both"), both, null));
    return times;
  }

  private List<Choice> waters(List<Listed> waters, Draft draft) {
    SurveyedWater chosen = draft.water();
    List<Choice> choices = new ArrayList<>();
    choices.add(new Choice("", phrases.text("compose.any-water"), chosen == null, null));
    for (Listed each : waters) {
      boolean here = chosen != null && chosen.id().equals(each.water().id());
      choices.add(new Choice(each.water().id(), each.water().title(), here, null));
    }
    if (chosen != null && choices.stream().noneMatch(Choice::chosen)) {
      choices.add(new Choice(chosen.id(), chosen.title(), true, null)); // a drill set brought it
    }
    return choices;
  }

  /** The title of a drill that was given none: what it measures. */
  String title(Composition composition) {
    List<Concept> concepts = composition.concepts();
    if (concepts.isEmpty()) {
      return phrases.text("compose.all-concepts");
    }
    String first = phrases.name(concepts.get(0));
    return concepts.size() == 1
        ? first
        : phrases.text("compose.and-more", first, concepts.size() - 1);
  }
}
