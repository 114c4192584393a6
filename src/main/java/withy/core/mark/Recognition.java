package withy.core.mark;

import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import withy.core.light.LightCharacter;

/** Which kinds of mark a practice could show so; in the order of {@link MarkKind}. */
public final class Recognition {
  private Recognition() {}

  /**
   * By body, colours and topmark; the light is not looked at. A topmark may be missing, as it may
   * be lost, but none may be wrong.
   */
  public static List<MarkKind> byDay(Practice practice, Appearance seen) {
    return kinds(
        practice,
        look ->
            MarkingRules.allows(practice, look.kind(), seen.body())
                && look.pattern() == seen.pattern()
                && Colours.match(look, seen.colours())
                && (seen.topmark() == null || seen.topmark().equals(look.topmark())));
  }

  /**
   * By shapes alone, too far off for colours. A special mark may have any body, so only its X tells
   * it.
   *
   * @param topmark null where none is seen
   */
  public static List<MarkKind> bySilhouette(
      Practice practice, BodyShape body, @Nullable TopmarkShape topmark) {
    return kinds(
        practice,
        look ->
            MarkingRules.allows(practice, look.kind(), body)
                && (topmark == null
                    ? !look.topmarkRequired(body) && look.kind() != MarkKind.SPECIAL
                    : look.topmarkPossible(body) && shape(look) == topmark));
  }

  /** By the colour and the rhythm of the light alone. */
  public static List<MarkKind> byLight(Practice practice, LightCharacter light) {
    return kinds(practice, look -> MarkingRules.allows(practice, look.kind(), light));
  }

  private static @Nullable TopmarkShape shape(MarkLook look) {
    return look.topmark() == null ? null : look.topmark().shape();
  }

  private static List<MarkKind> kinds(Practice practice, Predicate<MarkLook> fits) {
    return MarkingRules.kinds(practice).stream()
        .filter(kind -> fits.test(MarkingRules.look(practice, kind)))
        .toList();
  }
}
