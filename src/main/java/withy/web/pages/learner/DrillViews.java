package withy.web.pages.learner;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import withy.core.response.DrillKind;
import withy.usecase.JudgeReadiness.Verdict;
import withy.usecase.ListAssignments.OwnAssignment;
import withy.usecase.OwnStanding.Standing;
import withy.usecase.OwnStanding.State;
import withy.usecase.PractiseAlone.Advice;
import withy.web.pages.PageRenderer;
import withy.wording.Wording;

/** Puts drills into words, and where a learner stands. */
final class DrillViews {
  private final PageRenderer pages;
  private final Wording wording;
  private final DrillNames names;
  private final VerdictWords verdicts;

  DrillViews(PageRenderer pages) {
    this.pages = pages;
    this.wording = pages.wording();
    this.names = new DrillNames(wording);
    this.verdicts = new VerdictWords(wording);
  }

  DrillsView drills(
      String schoolClass,
      List<OwnAssignment> drills,
      List<Standing> standing,
      @Nullable Advice advice,
      Verdict readiness,
      Instant now) {
    List<DrillRow> rows = drills.stream().map(each -> row(each, now)).toList();
    DrillRow wall =
        drills.stream()
            .filter(OwnAssignment::waits)
            .findFirst()
            .map(each -> row(each, now))
            .orElse(null);
    String listed = drills.stream().map(OwnAssignment::id).collect(Collectors.joining(" "));
    return new DrillsView(
        schoolClass,
        wall,
        rows,
        listed,
        groups(standing),
        advised(advice),
        verdicts.said(readiness));
  }

  private DrillsView.@Nullable Advised advised(@Nullable Advice advice) {
    return advice == null
        ? null
        : new DrillsView.Advised(
            advice.concept().id(), wording.name(advice.concept()), why(advice));
  }

  private String why(Advice advice) {
    if (advice.belief() != null) {
      return wording.text(
          "page.advice.belief", advice.right(), advice.answers(), wording.name(advice.belief()));
    }
    String key = advice.settled() ? "page.advice.longest-ago" : "page.advice.unsettled";
    return wording.text(key, advice.right(), advice.answers());
  }

  private DrillRow row(OwnAssignment drill, Instant now) {
    int left = drill.length() - drill.answered();
    String rest = left == 0 ? wording.text("page.drills.done") : left(drill, left);
    Instant opens = drill.opensAt();
    return new DrillRow(
        drill.id(),
        names.title(drill),
        rest,
        due(drill, left, now),
        opens == null ? null : text("opens", pages.days().said(opens)));
  }

  private String left(OwnAssignment drill, int left) {
    return drill.kind() == DrillKind.READINESS
        ? text("left-at-most", left)
        : text("left", left, drill.length());
  }

  private @Nullable String due(OwnAssignment drill, int left, Instant now) {
    Instant due = drill.due();
    if (due == null || left == 0) {
      return null;
    }
    return text(due.isBefore(now) ? "over" : "due", pages.days().said(due));
  }

  /** The end of a readiness drill, with what it found. */
  EndView judged(OwnAssignment drill, List<Standing> standing, Verdict readiness) {
    return new EndView(
        wording.text("page.readiness.ended"), verdicts.said(readiness), groups(standing));
  }

  EndView end(OwnAssignment drill, List<Standing> standing) {
    boolean shown = drill.waits();
    return new EndView(
        wording.text(shown ? "page.end.shown-heading" : "page.end.heading"),
        wording.text(
            shown ? "page.end.shown-sentence" : "page.end.sentence",
            names.title(drill),
            drill.length()),
        groups(standing));
  }

  private List<StandingGroup> groups(List<Standing> standing) {
    List<StandingGroup> groups = new ArrayList<>();
    for (State state : State.values()) {
      List<String> concepts =
          standing.stream()
              .filter(each -> each.state() == state)
              .map(each -> wording.name(each.concept()))
              .toList();
      if (!concepts.isEmpty()) {
        String key = "page.standing." + state.id();
        groups.add(new StandingGroup(wording.text(key), wording.text(key + "-note"), concepts));
      }
    }
    return groups;
  }

  private String text(String key, Object... arguments) {
    return wording.text("page.drills." + key, arguments);
  }
}
