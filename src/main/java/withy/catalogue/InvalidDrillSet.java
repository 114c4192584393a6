package withy.catalogue;

import java.util.List;

/** A drill set that cannot be used, with all that is wrong with it. */
public final class InvalidDrillSet extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  InvalidDrillSet(String file, List<String> problems) {
    super(file + ": " + String.join("; ", problems));
  }
}
