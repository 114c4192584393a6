package withy.web.pages.instructor;

import withy.core.measurement.ClassRate;
import withy.drawing.IntervalPlot;
import withy.drawing.QrDrawing;
import withy.drawing.Svg;

/** The plots of the review, each with a name that says the same in words. */
final class Plots {
  private final Phrases phrases;

  Plots(Phrases phrases) {
    this.phrases = phrases;
  }

  /** The error rate of a class on a concept and where it lies. */
  Svg rate(ClassRate rate) {
    String name =
        phrases.text(
            "review.plot-name",
            phrases.percent(rate.mean()),
            phrases.percent(rate.lower()),
            phrases.percent(rate.upper()));
    return IntervalPlot.of(rate.lower(), rate.mean(), rate.upper(), ClassRate.TOLERANCE)
        .named(name);
  }

  /** A link as phones read it with their camera. */
  Svg qr(String link) {
    return QrDrawing.of(link).named(phrases.text("class.qr-name"));
  }
}
