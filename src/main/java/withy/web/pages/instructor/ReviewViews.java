package withy.web.pages.instructor;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import withy.core.measurement.ClassRate;
import withy.core.measurement.ConceptError;
import withy.core.measurement.Confusion;
import withy.core.measurement.ConfusionTable;
import withy.core.measurement.LearnerState;
import withy.core.measurement.Need;
import withy.core.measurement.Review;
import withy.core.measurement.Silence;
import withy.usecase.ClassReviews;
import withy.usecase.ComposeDrill;
import withy.usecase.Evidence;
import withy.usecase.JudgeReadiness.Readiness;
import withy.usecase.SchoolClass;
import withy.usecase.Telling;
import withy.web.pages.Link;
import withy.wording.Wording;

/** Puts the review of a class into words and plots; every figure is the review's own. */
final class ReviewViews {
  private static final int OTHERS = 2;

  /** Below one learner expected in need a concept is not named as what comes after. */
  private static final double LEAST_NEED = 1;

  private final Phrases phrases;
  private final Plots plots;
  private final ConfusionTableViews tables;
  private final Specimens specimens;
  private final Samples samples;
  private final ReadinessWords readiness;
  private final ConceptFigures figures;

  ReviewViews(Wording wording, ComposeDrill composeDrill) {
    this.phrases = new Phrases(wording);
    this.plots = new Plots(phrases);
    this.tables = new ConfusionTableViews(phrases);
    this.specimens = new Specimens(wording);
    this.samples = new Samples(composeDrill, specimens);
    this.readiness = new ReadinessWords(phrases);
    this.figures = new ConceptFigures(phrases);
  }

  /** What a page of a review is made from. */
  record Reviewed(
      SchoolClass shown,
      Review review,
      List<String> silent,
      List<Silence> silence,
      ClassReviews.Latest latest,
      List<Need> needs,
      Map<String, ClassRate> beginnings,
      Readiness readiness,
      ConfusionTable confusions,
      Map<String, List<Telling>> telling,
      List<Evidence.Kind> kinds,
      Map<String, String> ids) {}

  ReviewView review(Reviewed from) {
    SchoolClass shown = from.shown();
    Review review = from.review();
    AnswersBehind answers = new AnswersBehind(shown.id());
    List<String> silent = from.silent();
    int all = review.classSize() + silent.size();
    int count = review.concepts().stream().mapToInt(each -> each.rate().answers()).sum();
    return new ReviewView(
        shown.id(),
        shown.name(),
        phrases.text("review.class-base", review.classSize(), all, count),
        answers.all(),
        silent.isEmpty() ? null : phrases.text("review.silent", String.join(", ", silent)),
        new SilenceWords(phrases, answers).said(from.silence()),
        teach(from),
        review.concepts().stream().map(each -> concept(from, each)).toList(),
        new ChangeSentences(phrases, answers).of(from.latest()),
        people(from),
        learners(from),
        readiness.said(from.readiness()),
        from.readiness().learners().stream()
            .filter(each -> each.tries() > 0)
            .map(each -> readiness.judged(each, answers))
            .toList(),
        readiness.silent(from.readiness()),
        new GroupRows(phrases, answers, from.ids()).of(review),
        review.confusions().stream()
            .filter(Confusion::listed)
            .map(each -> confusion(shown, each))
            .toList(),
        tables.of(shown, from.confusions(), review.confusions()));
  }

  private ReviewView.@Nullable TeachNext teach(Reviewed from) {
    if (from.needs().isEmpty()) {
      return null;
    }
    Need most = from.needs().get(0);
    List<String> others =
        from.needs().stream()
            .skip(1)
            .limit(OTHERS)
            .filter(each -> each.expected() >= LEAST_NEED)
            .map(
                each ->
                    phrases.text(
                        "review.then", phrases.concept(each.concept()), phrases.need(each)))
            .toList();
    int needing =
        (int)
            from.review().learners().stream()
                .filter(each -> each.concept().equals(most.concept()) && each.needsHelp())
                .count();
    return new ReviewView.TeachNext(
        most.concept(),
        phrases.concept(most.concept()),
        phrases.text("review.teach-why", phrases.need(most), most.heard()),
        new AnswersBehind(from.shown().id()).on(most.concept()),
        needing,
        others);
  }

  private static List<Choice> people(Reviewed from) {
    return from.review().learners().stream()
        .map(LearnerState::learner)
        .distinct()
        .map(each -> new Choice(from.ids().getOrDefault(each, ""), each, false, null))
        .toList();
  }

  private ConceptRow concept(Reviewed from, ConceptError error) {
    SchoolClass shown = from.shown();
    Review review = from.review();
    return new ConceptRow(
        error.concept(),
        phrases.concept(error.concept()),
        plots.rate(error.rate()),
        phrases.verdict(error),
        phrases.base(error, review.classSize()),
        phrases.behind(error),
        figures.of(error, from),
        error.rate().wide() ? phrases.text("review.wide") : null,
        help(from, error.concept()),
        telling(from, error.concept()),
        kinds(from, error.concept()),
        from.telling().containsKey(error.concept())
            ? List.of()
            : samples.of(shown.practice(), error.concept()));
  }

  private List<HelpRow> help(Reviewed from, String concept) {
    AnswersBehind behind = new AnswersBehind(from.shown().id());
    return from.review().learners().stream()
        .filter(each -> each.concept().equals(concept) && each.needsHelp())
        .map(
            each ->
                new HelpRow(
                    each.learner(),
                    instead(each),
                    Integer.toString(each.answers()),
                    behind.of(from.ids().getOrDefault(each.learner(), ""), concept)))
        .toList();
  }

  private String instead(LearnerState state) {
    return phrases.instead(state.namedMisconception());
  }

  private List<ConceptRow.Shown> telling(Reviewed from, String concept) {
    AnswersBehind behind = new AnswersBehind(from.shown().id());
    return from.telling().getOrDefault(concept, List.of()).stream()
        .map(
            each ->
                new ConceptRow.Shown(
                    specimens.of(each.item()),
                    behind.item(each.id()),
                    phrases.counted("review.telling-by", each.learners(), each.learners())))
        .toList();
  }

  private List<Link> kinds(Reviewed from, String concept) {
    AnswersBehind behind = new AnswersBehind(from.shown().id());
    return from.kinds().stream()
        .filter(each -> each.concept().id().equals(concept))
        .map(each -> Link.to(phrases.name(each.form()), behind.kindPage(each.form().id(), concept)))
        .toList();
  }

  private List<LearnerRows> learners(Reviewed from) {
    Map<String, List<UnknownRow>> rows = new LinkedHashMap<>();
    for (LearnerState each : from.review().learners()) {
      if (each.needsHelp()) {
        rows.computeIfAbsent(each.learner(), name -> new ArrayList<>()).add(unknown(from, each));
      }
    }
    return rows.entrySet().stream()
        .map(
            each ->
                new LearnerRows(
                    from.ids().getOrDefault(each.getKey(), ""), each.getKey(), each.getValue()))
        .toList();
  }

  private UnknownRow unknown(Reviewed from, LearnerState state) {
    String learner = from.ids().getOrDefault(state.learner(), "");
    return new UnknownRow(
        phrases.concept(state.concept()),
        instead(state),
        phrases.percent(state.knows()),
        Phrases.exact(state.knows()),
        Integer.toString(state.answers()),
        new AnswersBehind(from.shown().id()).of(learner, state.concept()));
  }

  private ConfusionRow confusion(SchoolClass shown, Confusion confusion) {
    return new ConfusionRow(
        phrases.kind(shown.practice(), confusion.shown()),
        phrases.kind(shown.practice(), confusion.answered()),
        phrases.text(
            "review.confusion-base", confusion.learners(), confusion.times(), confusion.offered()),
        new AnswersBehind(shown.id()).taken(confusion.shown(), confusion.answered()));
  }
}
