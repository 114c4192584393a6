package withy.core.item;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import withy.core.light.LightCharacter;
import withy.core.mark.Appearance;
import withy.core.mark.BodyShape;
import withy.core.mark.Colour;
import withy.core.mark.ColourPattern;
import withy.core.mark.MarkLook;
import withy.core.mark.Topmark;
import withy.core.mark.TopmarkShape;

/** The parts into which the look of a mark is taken apart. */
final class Parts {
  private Parts() {}

  /** Whether the shape of the body tells a mark: that of a hand, in both regions. */
  private static boolean shapeTells(MarkLook look) {
    BodyShape first = look.bodies().get(0);
    return first == BodyShape.CAN || first == BodyShape.CONICAL;
  }

  /** A mark to be taken apart: on the body that tells it, else a pillar, with its topmark. */
  static Appearance whole(MarkLook look, @Nullable LightCharacter light) {
    BodyShape body = shapeTells(look) ? look.bodies().get(0) : BodyShape.PILLAR;
    return look.appearance(body, look.topmarkPossible(body), light);
  }

  /** The parts of a mark as it looks, in the order in which they are asked for. */
  static Map<Feature, Part> of(MarkLook look, Appearance seen) {
    Map<Feature, Part> parts = new LinkedHashMap<>();
    if (shapeTells(look)) {
      parts.put(Feature.BODY, body(seen.body()));
    }
    parts.put(Feature.COLOURS, colours(seen.pattern(), seen.colours()));
    @Nullable Topmark topmark = seen.topmark();
    if (topmark != null) {
      parts.put(Feature.TOPMARK, topmark(topmark));
    }
    @Nullable LightCharacter light = seen.light();
    if (light != null) {
      parts.put(Feature.LIGHT, light(light));
    }
    return parts;
  }

  static Part body(BodyShape body) {
    return new Part(body.id(), Words.term(body), grey(body, null, null));
  }

  static Part colours(ColourPattern pattern, List<Colour> colours) {
    StringBuilder value = new StringBuilder(pattern.id());
    colours.forEach(each -> value.append('-').append(each.id()));
    Message text =
        Message.of("part." + pattern.id() + "." + colours.size(), colours.toArray(new Object[0]));
    return new Part(
        value.toString(), text, new Appearance(BodyShape.PILLAR, pattern, colours, null, null));
  }

  /** Of no colour, so that the shape alone is chosen; a cross alone is yellow on every body. */
  static Part topmark(Topmark topmark) {
    boolean cross = topmark.shape() == TopmarkShape.UPRIGHT_CROSS;
    Topmark shown = cross ? topmark : Topmark.of(topmark.shape(), Colour.GREY);
    return new Part(
        topmark.shape().id(), Words.term(topmark.shape()), grey(BodyShape.PILLAR, shown, null));
  }

  static Part light(LightCharacter light) {
    String value = LightBeliefs.value(light);
    return new Part(value, Words.light(value), grey(BodyShape.PILLAR, null, light));
  }

  private static Appearance grey(
      BodyShape body, @Nullable Topmark topmark, @Nullable LightCharacter light) {
    return new Appearance(body, ColourPattern.PLAIN, List.of(Colour.GREY), topmark, light);
  }
}
