package withy.usecase;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Where the responses behind a figure are found. */
public interface Evidence {
  /** How many there are. */
  long count(Behind which);

  /**
   * The newest of them.
   *
   * @param before only those older than this place; null from the newest on
   * @param most at least 1
   */
  List<StoredResponse> newest(Behind which, @Nullable Place before, int most);

  /**
   * A place in the order of responses.
   *
   * @param item tells those of one moment apart
   */
  record Place(Instant answeredAt, String item) {}
}
