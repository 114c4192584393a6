package withy.web.pages.instructor;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import withy.core.mark.Practice;
import withy.core.measurement.ConceptError;
import withy.core.measurement.Review;
import withy.core.measurement.Verdict;
import withy.core.response.DrillKind;
import withy.usecase.AssignDrill.LearnerProgress;
import withy.usecase.AssignDrill.Progress;
import withy.usecase.Assignment;
import withy.usecase.InstructorAccount;
import withy.usecase.KeepDrillSet;
import withy.usecase.Responses.Overview;
import withy.usecase.SchoolClass;
import withy.web.pages.PageRenderer;

/** Puts classes into words and pictures. */
final class ClassViews {
  private static final int WEAKEST = 3;
  private static final Overview EMPTY = new Overview(0, 0, null);

  private final PageRenderer pages;
  private final Phrases phrases;
  private final Plots plots;
  private final KeepDrillSet drillSets;

  ClassViews(PageRenderer pages, KeepDrillSet drillSets) {
    this.pages = pages;
    this.drillSets = drillSets;
    this.phrases = new Phrases(pages.wording());
    this.plots = new Plots(phrases);
  }

  ClassesView list(
      List<SchoolClass> classes,
      Map<String, Overview> overview,
      @Nullable String news,
      String name,
      String practice) {
    List<ClassRow> rows =
        classes.stream().map(each -> row(each, overview.getOrDefault(each.id(), EMPTY))).toList();
    List<Choice> practices =
        Practice.values().stream()
            .map(each -> Choice.of(each, phrases.name(each), each.id().equals(practice)))
            .toList();
    return new ClassesView(rows, news, name, practices);
  }

  private ClassRow row(SchoolClass each, Overview overview) {
    int size = overview.learners();
    Instant last = overview.last();
    return new ClassRow(
        each.id(),
        each.name(),
        phrases.name(each.practice()),
        each.code(),
        phrases.counted(
            "classes.answered",
            (int) overview.answers(),
            phrases.counted("class.size", size, size),
            overview.answers()),
        last == null ? null : phrases.text("classes.last", pages.days().said(last)));
  }

  ClassView one(
      SchoolClass shown,
      int silent,
      String origin,
      @Nullable String news,
      List<Progress> progress,
      Review review,
      List<InstructorAccount> colleagues) {
    int size = review.classSize() + silent;
    String link = origin + "/join/" + shown.code();
    return new ClassView(
        shown.id(),
        shown.name(),
        phrases.name(shown.practice()),
        shown.practice().id(),
        phrases.counted("class.size", size, size),
        shown.code(),
        link,
        plots.qr(link),
        news,
        progress.stream().map(this::assigned).toList(),
        progress.isEmpty() ? first(shown.practice()) : null,
        weakest(review),
        colleagues(colleagues));
  }

  private List<Choice> colleagues(List<InstructorAccount> colleagues) {
    List<Choice> choices = new ArrayList<>();
    for (InstructorAccount each : colleagues) {
      choices.add(new Choice(each.id(), each.name(), false, null));
    }
    if (!choices.isEmpty()) {
      choices.add(0, new Choice("", phrases.text("class.hand-nobody"), true, null));
    }
    return choices;
  }

  private @Nullable Choice first(Practice practice) {
    return DrillSetChoices.of(drillSets.authored(), practice).stream().findFirst().orElse(null);
  }

  private AssignedRow assigned(Progress progress) {
    Assignment shown = progress.assignment();
    Instant due = shown.due();
    return new AssignedRow(
        shown.id(),
        title(progress),
        state(progress),
        due == null ? null : phrases.text("drills.due", pages.days().said(due)),
        progress.learners().stream().map(each -> row(each, shown)).toList());
  }

  /** A readiness drill ends with the answer that decides it, so its length says of nobody's end. */
  private String state(Progress progress) {
    Assignment shown = progress.assignment();
    boolean test = shown.terms().kind() == DrillKind.READINESS;
    int enough = test ? 1 : shown.composition().length();
    long done = progress.learners().stream().filter(each -> each.answered() >= enough).count();
    String key = test ? "assignment.begun" : "class.done-of";
    return phrases.text(key, done, progress.learners().size());
  }

  private ProgressRow row(LearnerProgress learner, Assignment shown) {
    Instant last = learner.lastAnsweredAt();
    return new ProgressRow(
        learner.nickname(),
        phrases.answered(learner, shown),
        last == null ? phrases.text("class.never") : pages.days().said(last));
  }

  String title(Progress progress) {
    return phrases.title(progress.assignment());
  }

  private List<WeakRow> weakest(Review review) {
    return review.concepts().stream()
        .filter(each -> each.verdict() != Verdict.TOO_LITTLE)
        .limit(WEAKEST)
        .map(each -> weak(each, review.classSize()))
        .toList();
  }

  private WeakRow weak(ConceptError error, int classSize) {
    String words =
        phrases.text(
            "class.weak-words",
            phrases.verdict(error),
            phrases.base(error, classSize),
            phrases.behind(error));
    return new WeakRow(
        error.concept(), phrases.concept(error.concept()), plots.rate(error.rate()), words);
  }
}
