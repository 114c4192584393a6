package withy.web.pages.instructor;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import withy.core.Term;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.mark.Practice;
import withy.core.measurement.ClassRate;
import withy.core.measurement.ConceptError;
import withy.core.measurement.Confusion;
import withy.core.measurement.LearnerState;
import withy.core.measurement.Review;
import withy.usecase.ComposeDrill;
import withy.usecase.SchoolClass;
import withy.wording.Wording;

/** Puts the review of a class into words and plots; every figure is the review's own. */
final class ReviewViews {
  private static final int SAMPLES = 2;
  private static final long SAMPLE_SEED = 1;

  private final Phrases phrases;
  private final Plots plots;
  private final Specimens specimens;
  private final ComposeDrill composeDrill;

  ReviewViews(Wording wording, ComposeDrill composeDrill) {
    this.phrases = new Phrases(wording);
    this.plots = new Plots(phrases);
    this.specimens = new Specimens(wording);
    this.composeDrill = composeDrill;
  }

  ReviewView review(SchoolClass shown, Review review, List<String> silent) {
    int all = review.classSize() + silent.size();
    int answers = review.concepts().stream().mapToInt(each -> each.rate().answers()).sum();
    return new ReviewView(
        shown.id(),
        shown.name(),
        phrases.text("review.class-base", review.classSize(), all, answers),
        silent.isEmpty() ? null : phrases.text("review.silent", String.join(", ", silent)),
        review.concepts().stream().map(each -> concept(shown, review, each)).toList(),
        learners(review),
        review.confusions().stream()
            .filter(Confusion::listed)
            .map(each -> confusion(shown.practice(), each))
            .toList());
  }

  private ConceptRow concept(SchoolClass shown, Review review, ConceptError error) {
    return new ConceptRow(
        error.concept(),
        phrases.concept(error.concept()),
        plots.rate(error.rate()),
        phrases.verdict(error),
        phrases.base(error, review.classSize()),
        phrases.behind(error),
        figures(error.rate()),
        error.rate().wide() ? phrases.text("review.wide") : null,
        help(review, error.concept()),
        samples(shown.practice(), error.concept()));
  }

  private List<Figure> figures(ClassRate rate) {
    return List.of(
        share("rate", rate.mean()),
        share("lower", rate.lower()),
        share("upper", rate.upper()),
        share("above", rate.aboveTolerance()),
        figure("effective", phrases.decimal(rate.effectiveAnswers()), rate.effectiveAnswers()));
  }

  private Figure share(String key, double value) {
    return figure(key, phrases.percent(value), value);
  }

  private Figure figure(String key, String text, double value) {
    String label = phrases.text("review.figure." + key);
    String says = phrases.text("review.figure." + key + "-says");
    return new Figure(label, text, Phrases.exact(value), says);
  }

  private List<HelpRow> help(Review review, String concept) {
    return review.learners().stream()
        .filter(each -> each.concept().equals(concept) && each.needsHelp())
        .map(each -> new HelpRow(each.learner(), instead(each), Integer.toString(each.answers())))
        .toList();
  }

  private String instead(LearnerState state) {
    return phrases.instead(state.namedMisconception());
  }

  private List<Specimen> samples(Practice practice, String concept) {
    Composition drill =
        new Composition(List.of(Term.parse(Concept.class, concept)), List.of(), null, SAMPLES);
    if (composeDrill.measurable(practice, drill).isEmpty()) {
      return List.of();
    }
    return composeDrill.sample(practice, drill, SAMPLE_SEED, SAMPLES).stream()
        .map(specimens::of)
        .toList();
  }

  private List<LearnerRows> learners(Review review) {
    Map<String, List<UnknownRow>> rows = new LinkedHashMap<>();
    for (LearnerState each : review.learners()) {
      if (each.needsHelp()) {
        rows.computeIfAbsent(each.learner(), name -> new ArrayList<>()).add(unknown(each));
      }
    }
    return rows.entrySet().stream()
        .map(each -> new LearnerRows(each.getKey(), each.getValue()))
        .toList();
  }

  private UnknownRow unknown(LearnerState state) {
    return new UnknownRow(
        phrases.concept(state.concept()),
        instead(state),
        phrases.percent(state.knows()),
        Phrases.exact(state.knows()),
        Integer.toString(state.answers()));
  }

  private ConfusionRow confusion(Practice practice, Confusion confusion) {
    return new ConfusionRow(
        phrases.kind(practice, confusion.shown()),
        phrases.kind(practice, confusion.answered()),
        phrases.text(
            "review.confusion-base", confusion.learners(), confusion.times(), confusion.offered()));
  }
}
