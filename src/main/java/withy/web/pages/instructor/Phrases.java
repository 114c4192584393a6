package withy.web.pages.instructor;

import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.item.Concept;
import withy.core.item.Misconception;
import withy.core.mark.MarkKind;
import withy.core.mark.Practice;
import withy.core.mark.PracticeNames;
import withy.core.measurement.Belief;
import withy.core.measurement.ConceptError;
import withy.core.measurement.Need;
import withy.core.measurement.Verdict;
import withy.core.response.DrillKind;
import withy.usecase.AssignDrill.LearnerProgress;
import withy.usecase.Assignment;
import withy.web.pages.DrillTitles;
import withy.wording.Wording;

/** Words for what the review is about: concepts, beliefs, verdicts, figures. */
public final class Phrases {
  private static final double OPEN_ABOVE = 0.20;

  private final Wording wording;

  public Phrases(Wording wording) {
    this.wording = wording;
  }

  /** A text of the pages. */
  public String text(String key, Object... arguments) {
    return wording.text("page." + key, arguments);
  }

  /** The text for none, one or many, which stand under the key with these endings. */
  public String counted(String key, int count, Object... arguments) {
    String ending = count == 0 ? ".none" : count == 1 ? ".one" : ".many";
    return text(key + ending, arguments);
  }

  /** How much a learner has answered of a drill; how long a readiness drill is, nobody knows. */
  String answered(LearnerProgress learner, Assignment drill) {
    return drill.terms().kind() == DrillKind.READINESS
        ? text("assignment.answered", learner.answered())
        : text("class.answered-of", learner.answered(), drill.composition().length());
  }

  /** The name of a term. */
  public String name(Term term) {
    return wording.name(term);
  }

  /** What a drill is called. */
  public String title(Assignment drill) {
    return new DrillTitles(wording).of(drill);
  }

  /** The name of a concept. */
  public String concept(String id) {
    return name(Term.parse(Concept.class, id));
  }

  /** What a misconception mistakes. */
  public String belief(String id) {
    return name(Term.parse(Misconception.class, id));
  }

  /** The name that a practice gives a kind of mark. */
  public String kind(Practice practice, String id) {
    return wording.text(PracticeNames.key(practice, new MarkKind(id)));
  }

  /** The belief most often behind the errors on a concept, in words. */
  String behind(ConceptError error) {
    Belief belief = error.beliefBehind();
    return belief == null ? text("review.no-belief") : belief(belief.misconception());
  }

  /** What a learner believes instead. */
  String instead(@Nullable String misconception) {
    return misconception == null ? text("review.no-belief") : belief(misconception);
  }

  /**
   * A verdict as an instructor reads it. "Sound" is said only where it is as sure as "watch" is on
   * the other side; what lies between is open.
   */
  String verdict(ConceptError error) {
    boolean open = error.verdict() == Verdict.SOUND && error.rate().aboveTolerance() > OPEN_ABOVE;
    return text("review.verdict-" + (open ? "open" : error.verdict().id()));
  }

  String base(ConceptError error, int classSize) {
    return text("review.base", error.rate().learners(), classSize, error.rate().answers());
  }

  /** How many learners need a concept, give or take. */
  String need(Need need) {
    return text("review.need", decimal(need.expected()), decimal(need.deviation()));
  }

  /** A share of 1 in per cent with one decimal. */
  public String percent(double share) {
    return text("review.percent", String.format(wording.locale(), "%.1f", share * 100));
  }

  /** A share of 1 in whole per cent. */
  String wholePercent(double share) {
    return text("review.percent", String.format(wording.locale(), "%.0f", share * 100));
  }

  String whole(int value) {
    return String.format(wording.locale(), "%d", value);
  }

  /** With two decimals. */
  public String hundredths(double value) {
    return String.format(wording.locale(), "%.2f", value);
  }

  /** With one decimal. */
  public String decimal(double value) {
    return String.format(wording.locale(), "%.1f", value);
  }

  /** In full, as files have it. */
  public static String exact(double value) {
    return Double.toString(value);
  }
}
