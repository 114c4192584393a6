package withy.web.pages.wall;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import withy.core.light.LightCharacter;
import withy.core.mark.Appearance;
import withy.core.mark.BodyShape;
import withy.core.mark.Colour;
import withy.core.mark.MarkDescription;
import withy.core.mark.Practice;
import withy.core.mark.Side;
import withy.core.mark.Topmark;
import withy.core.waterway.Call;
import withy.core.waterway.PlacedMark;
import withy.wording.Wording;

/** How marks are called aloud: what it is, and what to do about it. */
final class MarkCalls {
  private static final int MOST_COLOURS = 3;

  private final Wording wording;
  private final Practice practice;
  private final boolean night;

  MarkCalls(Wording wording, Practice practice, boolean night) {
    this.wording = wording;
    this.practice = practice;
    this.night = night;
  }

  /** By day what is seen of it, at night its light. */
  String name(PlacedMark mark) {
    String label = mark.label();
    String kind = wording.text(nameKey(mark));
    String called = label == null ? kind : text("wall.numbered", kind, label);
    return text("wall.mark", called, night ? light(mark.appearance()) : look(mark.appearance()));
  }

  /** Kind and number alone. */
  String plain(PlacedMark mark) {
    String label = mark.label();
    String kind = wording.text(nameKey(mark));
    return label == null ? kind : text("wall.numbered", kind, label);
  }

  private String nameKey(PlacedMark mark) {
    return practice
        .mark(mark.kind(), mark.appearance())
        .or(() -> practice.mark(mark.kind()))
        .map(MarkDescription::nameKey)
        .orElse("mark." + mark.kind().id());
  }

  private String look(Appearance seen) {
    List<Colour> colours = seen.colours().stream().limit(MOST_COLOURS).toList();
    String painted =
        colours.stream().map(wording::name).collect(Collectors.joining(text("wall.and")));
    String body = text("wall.body", painted, seen.body());
    Topmark topmark = seen.topmark();
    boolean shaped = seen.body() == BodyShape.CAN || seen.body() == BodyShape.CONICAL;
    return topmark == null || shaped ? body : text("wall.with-topmark", body, topmark.shape());
  }

  private String light(Appearance seen) {
    LightCharacter light = seen.light();
    return light == null ? text("wall.unlit") : text("wall.light-shown", light.shortNotation());
  }

  /** What the rules ask there. */
  String order(Call call) {
    if (call.pass() != null) {
      String key = call.toStarboard() ? "wall.pass-starboard" : "wall.pass-port";
      return text(key, call.pass());
    }
    return order(call.side());
  }

  private String order(@Nullable Side side) {
    if (side == null) {
      return text("wall.see-chart");
    }
    return switch (side) {
      case LEAVE_TO_PORT -> text("wall.leave-to-port");
      case LEAVE_TO_STARBOARD -> text("wall.leave-to-starboard");
      case EITHER_SIDE -> text("wall.either-side");
      case KEEP_CLEAR -> text("wall.keep-clear");
    };
  }

  private String text(String key, Object... arguments) {
    return wording.text("page." + key, arguments);
  }
}
