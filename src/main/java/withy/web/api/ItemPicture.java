package withy.web.api;

import withy.core.item.Item;
import withy.drawing.Svg;

/** Draws what a learner sees of an item. */
@FunctionalInterface
public interface ItemPicture {
  Svg of(Item item);
}
