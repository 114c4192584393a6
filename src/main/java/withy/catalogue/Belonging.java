package withy.catalogue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Position;
import withy.core.hydrography.SurveyedMark;
import withy.core.item.Message;
import withy.core.waterway.Fairway;

/** Which fairway each lateral mark belongs to: the one it names, else the nearest. */
final class Belonging {
  /** Metres beyond the edge of a fairway at which a mark still belongs to it. */
  private static final double BESIDE = 150;

  private final List<String> named;
  private final List<Fairway> fairways;
  private final Problems problems;

  /**
   * What marks may belong to.
   *
   * @param named the ids of all fairways, of those with something wrong as well
   */
  Belonging(List<String> named, List<Fairway> fairways, Problems problems) {
    this.named = named;
    this.fairways = fairways;
    this.problems = problems;
  }

  List<SurveyedMark> of(Map<SurveyedFeature, SurveyedMark> read) {
    List<SurveyedMark> marks = new ArrayList<>();
    read.forEach((feature, mark) -> marks.add(serving(feature, mark)));
    return marks;
  }

  private SurveyedMark serving(SurveyedFeature feature, SurveyedMark mark) {
    @Nullable String stated = mark.serves();
    boolean lateral = mark.kind().isLateral() || mark.kind().isPreferredChannel();
    @Nullable String serves = stated;
    if (stated != null && !named.contains(stated)) {
      problems.add(feature.attributes().place("serves"), "no-fairway", stated);
    } else if (stated == null && lateral) {
      serves = nearest(mark.position());
      if (serves == null) {
        problems.remark(feature.place(), "serves-none", Message.of("mark." + mark.kind().id()));
      }
    }
    return new SurveyedMark(
        mark.kind(),
        mark.position(),
        serves,
        mark.label(),
        mark.body(),
        mark.fixed(),
        mark.light());
  }

  private @Nullable String nearest(Position place) {
    return fairways.stream()
        .filter(each -> off(each, place) <= BESIDE)
        .min(Comparator.comparingDouble(each -> off(each, place)))
        .map(Fairway::id)
        .orElse(null);
  }

  private static double off(Fairway fairway, Position place) {
    return fairway.line().foot(place).distance() - fairway.width() / 2;
  }
}
