package withy.web.pages.instructor;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.usecase.AssignDrill.LearnerProgress;
import withy.usecase.AssignDrill.Progress;
import withy.usecase.Assignment;
import withy.usecase.JudgeReadiness.Readiness;
import withy.usecase.SchoolClass;
import withy.usecase.TalkOver;
import withy.web.pages.PageRenderer;

/** Puts an assignment into words. */
final class AssignmentViews {
  private final PageRenderer pages;
  private final Phrases phrases;
  private final Specimens specimens;
  private final ReadinessWords readinessWords;

  AssignmentViews(PageRenderer pages) {
    this.pages = pages;
    this.phrases = new Phrases(pages.wording());
    this.specimens = new Specimens(pages.wording());
    this.readinessWords = new ReadinessWords(phrases);
  }

  AssignmentView view(
      SchoolClass own,
      Progress progress,
      @Nullable Readiness readiness,
      List<TalkOver.Asked> asked) {
    Assignment shown = progress.assignment();
    List<AssignmentView.TalkItem> items = new ArrayList<>();
    for (TalkOver.Asked each : asked) {
      items.add(item(items.size() + 1, each));
    }
    return new AssignmentView(
        shown.id(),
        own.id(),
        own.name(),
        phrases.title(shown),
        phrases.text("compose.kind-" + shown.terms().kind().id()),
        begun(progress),
        facts(progress),
        readiness == null ? null : readinessWords.said(readiness),
        progress.learners().stream().map(each -> row(shown, each, readiness)).toList(),
        items);
  }

  private Linked begun(Progress progress) {
    Assignment shown = progress.assignment();
    long begun = progress.learners().stream().filter(each -> each.answered() > 0).count();
    String said = phrases.text("assignment.begun", begun, progress.learners().size());
    return new Linked(
        said,
        phrases.text("assignment.begun-says", said, phrases.title(shown)),
        new AnswersBehind(shown.schoolClass()).in(shown.id()));
  }

  private List<String> facts(Progress progress) {
    Assignment shown = progress.assignment();
    List<String> facts = new ArrayList<>();
    facts.add(phrases.text("assignment.assigned", pages.days().said(shown.assignedAt())));
    Instant opens = shown.terms().opensAt();
    if (opens != null) {
      facts.add(phrases.text("assignment.opens", pages.days().said(opens)));
    }
    if (shown.due() != null) {
      facts.add(phrases.text("drills.due", pages.days().said(shown.due())));
    }
    return facts;
  }

  private AssignmentView.DoneRow row(
      Assignment shown, LearnerProgress learner, @Nullable Readiness readiness) {
    Instant last = learner.lastAnsweredAt();
    Instant extended = shown.terms().extensions().get(learner.learner());
    Instant due = shown.dueFor(learner.learner());
    return new AssignmentView.DoneRow(
        learner.learner(),
        learner.nickname(),
        answered(shown, learner),
        last(last, due),
        readiness == null ? null : judged(shown, learner, readiness),
        extended == null ? "" : pages.days().said(extended));
  }

  private Linked answered(Assignment shown, LearnerProgress learner) {
    String said = phrases.answered(learner, shown);
    return new Linked(
        said,
        phrases.text("assignment.answered-says", said, learner.nickname()),
        new AnswersBehind(shown.schoolClass()).in(shown.id(), learner.learner()));
  }

  private String last(@Nullable Instant last, @Nullable Instant due) {
    if (last == null) {
      return phrases.text("class.never");
    }
    String said = pages.days().said(last);
    boolean late = due != null && last.isAfter(due);
    return late ? phrases.text("assignment.late", said) : said;
  }

  private @Nullable Judged judged(Assignment shown, LearnerProgress learner, Readiness readiness) {
    AnswersBehind answers = new AnswersBehind(shown.schoolClass());
    return readiness.learners().stream()
        .filter(each -> each.learner().equals(learner.learner()))
        .findFirst()
        .map(each -> readinessWords.judged(each, answers))
        .orElse(null);
  }

  private AssignmentView.TalkItem item(int number, TalkOver.Asked asked) {
    String base = phrases.text("assignment.item-base", asked.right(), asked.answered());
    return new AssignmentView.TalkItem(
        number, specimens.of(asked.item()), base, specimens.counts(asked));
  }
}
