package withy.web.api;

import withy.core.item.Item;
import withy.core.item.Message;
import withy.drawing.Svg;

/** Puts an item into words and into a picture. */
public interface ItemVoice {
  String text(Message message);

  String prompt(Item item);

  /** What the learner sees of the scenario; it tells nothing beyond that. */
  Svg picture(Item item);
}
