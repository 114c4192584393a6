package withy.web.pages.instructor;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.response.DrillKind;
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
    String title = shown.title().isEmpty() ? phrases.text("drills.untitled") : shown.title();
    return new AssignmentView(
        shown.id(),
        own.id(),
        own.name(),
        title,
        phrases.text("compose.kind-" + shown.terms().kind().id()),
        facts(progress),
        readiness == null ? null : readinessWords.said(readiness),
        progress.learners().stream().map(each -> row(shown, each, readiness)).toList(),
        items);
  }

  private List<String> facts(Progress progress) {
    Assignment shown = progress.assignment();
    List<String> facts = new ArrayList<>();
    long done = progress.learners().stream().filter(each -> each.answered() > 0).count();
    facts.add(phrases.text("assignment.begun", done, progress.learners().size()));
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
    boolean test = shown.terms().kind() == DrillKind.READINESS;
    Instant last = learner.lastAnsweredAt();
    Instant extended = shown.terms().extensions().get(learner.learner());
    Instant due = shown.dueFor(learner.learner());
    return new AssignmentView.DoneRow(
        learner.learner(),
        learner.nickname(),
        test
            ? phrases.text("assignment.answered", learner.answered())
            : phrases.text("class.answered-of", learner.answered(), shown.composition().length()),
        last(last, due),
        readiness == null ? null : judged(learner, readiness),
        extended == null ? "" : pages.days().said(extended));
  }

  private String last(@Nullable Instant last, @Nullable Instant due) {
    if (last == null) {
      return phrases.text("class.never");
    }
    String said = pages.days().said(last);
    boolean late = due != null && last.isAfter(due);
    return late ? phrases.text("assignment.late", said) : said;
  }

  private String judged(LearnerProgress learner, Readiness readiness) {
    return readiness.learners().stream()
        .filter(each -> each.learner().equals(learner.learner()))
        .findFirst()
        .map(readinessWords::said)
        .orElse("");
  }

  private AssignmentView.TalkItem item(int number, TalkOver.Asked asked) {
    String base = phrases.text("assignment.item-base", asked.right(), asked.answered());
    return new AssignmentView.TalkItem(
        number, specimens.of(asked.item()), base, specimens.counts(asked));
  }
}
