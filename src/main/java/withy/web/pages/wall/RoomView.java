package withy.web.pages.wall;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.drawing.Svg;
import withy.web.pages.Link;

/**
 * An item in a room.
 *
 * @param chart null where pictures stand for it, as is what lies over it
 * @param pictures none where there is a chart
 * @param count where the script asks how many have answered
 * @param answered how many have, of how many
 * @param tell to which the form is sent that shows the answer
 * @param answers none before the class was shown the answer
 * @param change sentences about it since the time before; none before the answer was shown
 * @param like to which the form is sent that puts another such item to the room
 * @param ways to where the item came from
 */
public record RoomView(
    @Nullable Svg chart,
    @Nullable Svg over,
    List<Svg> pictures,
    String prompt,
    String facts,
    String count,
    String answered,
    boolean revealed,
    String tell,
    List<AnswerRow> answers,
    String explanation,
    List<String> change,
    String like,
    List<Link> ways,
    Link again) {}
