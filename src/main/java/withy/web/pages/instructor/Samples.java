package withy.web.pages.instructor;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.List;
import withy.core.Term;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.mark.Practice;
import withy.usecase.ComposeDrill;

/**
 * Items that measure a concept, the same for everybody and at any time. To invent and draw them
 * takes most of the time of a review, so those drawn are kept.
 */
final class Samples {
  private static final int SAMPLES = 2;
  private static final long SEED = 1;

  /** More than there are concepts, times the practices that one school teaches. */
  private static final int KEPT = 100;

  private final ComposeDrill composeDrill;
  private final Specimens specimens;
  private final Cache<Asked, List<Specimen>> drawn =
      Caffeine.newBuilder().maximumSize(KEPT).build();

  Samples(ComposeDrill composeDrill, Specimens specimens) {
    this.composeDrill = composeDrill;
    this.specimens = specimens;
  }

  private record Asked(Practice practice, String concept) {}

  /**
   * None if the practice has nothing that measures the concept.
   *
   * @param concept by its word
   */
  List<Specimen> of(Practice practice, String concept) {
    return drawn.get(new Asked(practice, concept), this::drawn);
  }

  private List<Specimen> drawn(Asked asked) {
    Composition drill =
        new Composition(
            List.of(Term.parse(Concept.class, asked.concept())), List.of(), null, SAMPLES);
    if (composeDrill.measurable(asked.practice(), drill).isEmpty()) {
      return List.of();
    }
    return composeDrill.sample(asked.practice(), drill, SEED, SAMPLES).stream()
        .map(specimens::of)
        .toList();
  }
}
