package withy.web.pages.instructor;

import java.util.ArrayList;
import java.util.List;
import withy.core.measurement.Belief;
import withy.core.measurement.ClassRate;
import withy.core.measurement.ConceptError;
import withy.core.measurement.Need;

/** The figures of a class on a concept, each with its sentence and the answers behind it. */
record ConceptFigures(Phrases phrases) {
  List<Figure> of(ConceptError error, ReviewViews.Reviewed from) {
    AnswersBehind answers = new AnswersBehind(from.shown().id());
    String concept = error.concept();
    String all = answers.on(concept);
    ClassRate rate = error.rate();
    List<Figure> figures = new ArrayList<>();
    figures.add(share("rate", rate.mean(), answers.wrong(concept)));
    figures.add(share("lower", rate.lower(), all));
    figures.add(share("upper", rate.upper(), all));
    figures.add(share("above", rate.aboveTolerance(), all));
    figures.add(decimal("effective", rate.effectiveAnswers(), all));
    figures.add(answers(rate, from.review().classSize(), all));
    ClassRate begun = from.beginnings().get(concept);
    if (begun != null) {
      figures.add(share("begun", begun.mean(), answers.first(concept)));
    }
    from.needs().stream()
        .filter(each -> each.concept().equals(concept))
        .forEach(each -> figures.add(need(each, all)));
    Belief belief = error.beliefBehind();
    if (belief != null) {
      figures.add(belief(belief, answers.led(concept, belief.misconception())));
    }
    return figures;
  }

  private Figure answers(ClassRate rate, int classSize, String behind) {
    String says = phrases.text("review.figure.answers-says", rate.learners(), classSize);
    String text = phrases.text("review.count", rate.answers());
    return new Figure(label("answers"), text, String.valueOf(rate.answers()), says, behind);
  }

  private Figure belief(Belief belief, String behind) {
    String says = phrases.text("review.figure.belief-says", belief.learners());
    String text = phrases.belief(belief.misconception());
    return new Figure(label("belief"), text, belief.misconception(), says, behind);
  }

  private Figure need(Need need, String behind) {
    return figure("need", phrases.need(need), need.expected(), behind);
  }

  private Figure share(String key, double value, String behind) {
    return figure(key, phrases.percent(value), value, behind);
  }

  private Figure decimal(String key, double value, String behind) {
    return figure(key, phrases.decimal(value), value, behind);
  }

  private Figure figure(String key, String text, double value, String behind) {
    String says = phrases.text("review.figure." + key + "-says");
    return new Figure(label(key), text, Phrases.exact(value), says, behind);
  }

  private String label(String key) {
    return phrases.text("review.figure." + key);
  }
}
