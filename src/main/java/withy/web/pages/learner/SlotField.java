package withy.web.pages.learner;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.drawing.Svg;

/** The parts of which one is chosen for a feature of a mark, or for a mark of a passage. */
public record SlotField(String name, String label, List<PartRow> parts) {
  /** One of the parts. */
  public record PartRow(String value, String text, boolean chosen, @Nullable Svg picture) {}
}
