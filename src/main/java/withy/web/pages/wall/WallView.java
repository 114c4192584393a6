package withy.web.pages.wall;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.drawing.Svg;
import withy.web.pages.Link;

/**
 * The wall.
 *
 * @param voyage what the script needs to run the boat, as JSON
 * @param place where the script asks what a place is
 * @param back the step before; the first one again at the beginning
 * @param on the next step; the last one again at the end
 * @param call of the mark ahead, or what is said at the beginning and at the end
 * @param travel how the voyage lies to the conventional direction
 */
public record WallView(
    String title,
    Svg chart,
    Svg over,
    String voyage,
    String place,
    boolean night,
    CallView call,
    String travel,
    List<ValueRow> values,
    Link back,
    Link on,
    List<Choices> choices,
    List<Link> kinds,
    Link another,
    List<Link> marks,
    @Nullable AwayView away,
    @Nullable PlaceView looked,
    RoomForm room) {}
