package withy.web.pages.evidence;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.measurement.Distractor;
import withy.core.measurement.KindAnalysis;
import withy.core.measurement.Separation;
import withy.core.measurement.WilsonInterval;
import withy.usecase.Behind.Which;
import withy.usecase.ShowKind;
import withy.web.pages.PageRenderer;
import withy.web.pages.instructor.AnswersBehind;
import withy.web.pages.instructor.Figure;
import withy.web.pages.instructor.Phrases;
import withy.web.pages.instructor.Specimens;

/** Puts a kind of question into words and figures. */
final class KindViews {
  /** As the intervals of a review have it. */
  private static final double CONFIDENCE = 0.90;

  private static final double MILLIS = 1_000;

  private final Phrases phrases;
  private final Specimens specimens;

  KindViews(PageRenderer pages) {
    this.phrases = new Phrases(pages.wording());
    this.specimens = new Specimens(pages.wording());
  }

  KindView of(ShowKind.Found found) {
    KindAnalysis kind = found.analysis();
    Lists lists = new Lists(new AnswersBehind(found.schoolClass().id()), found);
    boolean any = kind.answers() > 0;
    return new KindView(
        found.schoolClass().id(),
        found.schoolClass().name(),
        phrases.name(found.form()),
        found.concept().id(),
        phrases.name(found.concept()),
        phrases.counted("kind.base", kind.answers(), kind.answers(), kind.learners()),
        lists.of(Which.ALL),
        found.older() ? phrases.text("kind.older", kind.answers()) : null,
        any ? figures(kind, lists) : List.of(),
        any && !kind.isJudged()
            ? phrases.counted("kind.unjudged", kind.learners(), kind.learners())
            : null,
        any ? rows(kind, lists) : List.of(),
        found.items().stream()
            .map(
                each ->
                    new KindView.Shown(specimens.of(each.item()), lists.behind().item(each.id())))
            .toList());
  }

  /** Where the answers behind the figures of one kind are listed. */
  private record Lists(AnswersBehind behind, ShowKind.Found found) {
    String of(Which which) {
      return behind.kind(found.form().id(), found.concept().id(), which);
    }

    String led(String misconception) {
      return behind.kindLed(found.form().id(), found.concept().id(), misconception);
    }
  }

  private List<Figure> figures(KindAnalysis kind, Lists lists) {
    List<Figure> figures = new ArrayList<>();
    String facility = phrases.percent(kind.facility());
    figures.add(figure("facility", facility, kind.facility(), lists.of(Which.RIGHT)));
    figures.add(interval(kind, lists));
    if (kind.rapid() < kind.answers()) {
      double seconds = kind.medianMillis() / MILLIS;
      String time = phrases.text("kind.seconds", phrases.decimal(seconds));
      figures.add(figure("time", time, seconds, lists.of(Which.ALL)));
    }
    if (kind.rapid() > 0) {
      String rapid = phrases.text("review.count", kind.rapid());
      figures.add(figure("rapid", rapid, kind.rapid(), lists.of(Which.RAPID)));
    }
    if (kind.isJudged()) {
      figures.add(discrimination(kind.discrimination(), lists));
    }
    return figures;
  }

  private Figure figure(String name, String text, double exact, String behind) {
    String says = phrases.text("kind.figure." + name + "-says");
    return new Figure(label(name), text, Phrases.exact(exact), says, behind);
  }

  private String label(String name) {
    return phrases.text("kind.figure." + name);
  }

  private Figure interval(KindAnalysis kind, Lists lists) {
    WilsonInterval interval = kind.interval(CONFIDENCE);
    String text =
        phrases.text(
            "kind.between", phrases.percent(interval.lower()), phrases.percent(interval.upper()));
    String exact = Phrases.exact(interval.lower()) + "/" + Phrases.exact(interval.upper());
    String says = phrases.text("kind.figure.interval-says");
    return new Figure(label("interval"), text, exact, says, lists.of(Which.ALL));
  }

  private Figure discrimination(@Nullable Double coefficient, Lists lists) {
    String label = label("discrimination");
    String all = lists.of(Which.ALL);
    if (coefficient == null) {
      return new Figure(
          label, phrases.text("kind.untold"), "", phrases.text("kind.untold-says"), all);
    }
    String says = phrases.text("kind.separation-" + Separation.of(coefficient).id());
    return new Figure(
        label, phrases.hundredths(coefficient), Phrases.exact(coefficient), says, all);
  }

  private List<KindView.Row> rows(KindAnalysis kind, Lists lists) {
    List<KindView.Row> rows = new ArrayList<>();
    rows.add(row(phrases.text("responses.right"), kind.right(), kind, lists.of(Which.RIGHT)));
    kind.distractors().stream()
        .filter(each -> !each.isMixture())
        .forEach(each -> rows.add(row(phrases.belief(each.misconception()), each, kind, lists)));
    kind.distractors().stream()
        .filter(Distractor::isMixture)
        .forEach(each -> rows.add(row(phrases.text("kind.others"), each, kind, lists)));
    rows.add(row(phrases.text("responses.unsure"), kind.unsure(), kind, lists.of(Which.UNSURE)));
    return rows;
  }

  private KindView.Row row(String answer, int times, KindAnalysis kind, String behind) {
    double share = (double) times / kind.answers();
    String count = phrases.text("review.cell", times, kind.answers());
    return new KindView.Row(answer, phrases.percent(share), count, behind, null);
  }

  private KindView.Row row(String answer, Distractor wrong, KindAnalysis kind, Lists lists) {
    return new KindView.Row(
        answer,
        phrases.percent(wrong.share()),
        phrases.text("review.cell", wrong.chosen(), wrong.offered()),
        lists.led(wrong.misconception()),
        kind.isJudged() && !wrong.isMixture() ? work(wrong.work()) : null);
  }

  private String work(@Nullable Term work) {
    return phrases.text("kind.work-" + (work == null ? "open" : work.id()));
  }
}
