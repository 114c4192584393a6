package withy.core.mark;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import withy.core.light.LightCharacter;

/**
 * Which kinds of mark a practice could show so; in the order in which it lists them. Marks that the
 * chart alone tells, and those of some waters alone, are not among them.
 */
public final class Recognition {
  private Recognition() {}

  /**
   * By body, colours, symbol, board and topmark; the light is not looked at. A topmark may be
   * missing, as it may be lost, but none may be wrong. A symbol of the Intracoastal Waterway leaves
   * the mark what it is.
   */
  public static List<MarkKind> byDay(Practice practice, Appearance seen) {
    return kinds(practice, mark -> mark.isToldByLook() && looks(mark, seen));
  }

  /** The same with the marks that the chart alone tells from others. */
  public static List<MarkKind> possibleByDay(Practice practice, Appearance seen) {
    return kinds(practice, mark -> looks(mark, seen));
  }

  private static boolean looks(MarkDescription mark, Appearance seen) {
    return mayHave(mark, seen)
        && mark.look().pattern() == seen.pattern()
        && Colours.match(mark.look(), seen.colours())
        && (seen.topmark() == null || seen.topmark().equals(mark.look().topmark()));
  }

  private static boolean mayHave(MarkDescription mark, Appearance seen) {
    Symbol symbol = seen.symbol() == null || seen.symbol().isIntracoastal() ? null : seen.symbol();
    return MarkingRules.allows(mark, seen.body())
        && mark.look().symbol() == symbol
        && (seen.body() != BodyShape.DAYBOARD || Objects.equals(mark.look().board(), seen.board()));
  }

  /**
   * By shapes alone, too far off for colours. A special mark may have any body, so only its X tells
   * it; marks with symbols have any body and no topmark, so nothing does.
   *
   * @param topmark null where none is seen
   */
  public static List<MarkKind> bySilhouette(
      Practice practice, BodyShape body, @Nullable TopmarkShape topmark) {
    return kinds(
        practice,
        mark ->
            mark.isToldAtNight()
                && MarkingRules.allows(mark, body)
                && (topmark == null
                    ? !mark.look().topmarkRequired(body) && !mark.kind().equals(MarkKind.SPECIAL)
                    : mark.look().topmarkPossible(body) && shape(mark.look()) == topmark));
  }

  /** By the colour and the rhythm of the light alone. */
  public static List<MarkKind> byLight(Practice practice, LightCharacter light) {
    return kinds(practice, mark -> mark.isToldAtNight() && mark.lightLimit().allows(light));
  }

  private static @Nullable TopmarkShape shape(MarkLook look) {
    return look.topmark() == null ? null : look.topmark().shape();
  }

  private static List<MarkKind> kinds(Practice practice, Predicate<MarkDescription> fits) {
    Set<MarkKind> kinds = new LinkedHashSet<>();
    for (MarkDescription each : practice.marks()) {
      if (fits.test(each)) {
        kinds.add(each.kind());
      }
    }
    return List.copyOf(kinds);
  }
}
