package withy.web.pages.wall;

import java.util.List;
import withy.drawing.Svg;
import withy.web.pages.Link;

/**
 * An item in a room.
 *
 * @param count where the script asks how many have answered
 * @param answered how many have, of how many
 * @param tell to which the form is sent that shows the answer
 * @param answers none before the class was shown the answer
 */
public record RoomView(
    Svg chart,
    Svg over,
    String prompt,
    String facts,
    String count,
    String answered,
    boolean revealed,
    String tell,
    List<AnswerRow> answers,
    String explanation,
    Link back,
    Link again) {}
