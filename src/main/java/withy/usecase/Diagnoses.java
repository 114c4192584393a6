package withy.usecase;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import withy.core.item.Concept;
import withy.core.item.Misconception;
import withy.core.measurement.ConceptSums;
import withy.core.measurement.Frequencies;
import withy.core.measurement.LearnerModel;
import withy.core.measurement.LearnerState;
import withy.core.measurement.LearnerSums;

/**
 * What the answers of a learner show, in the light of what other learners of this server were found
 * to hold. How common each belief is changes slowly, so that is worked out now and then.
 */
final class Diagnoses {
  /** As many as tell how common a belief is, and few enough to read within a moment. */
  private static final int LEARNERS = 300;

  private static final Duration KEPT = Duration.ofMinutes(10);

  private final Responses responses;
  private final Cache<Concept, LearnerModel> models =
      Caffeine.newBuilder().expireAfterWrite(KEPT).build();

  Diagnoses(Responses responses) {
    this.responses = responses;
  }

  /** What is shown of a concept, by the answers so far. */
  LearnerState of(LearnerSums sums, Concept concept) {
    LearnerModel model = model(concept);
    ConceptSums own = sums.concepts().get(concept.id());
    return model.after(sums.learner(), concept.id(), own == null ? model.noAnswers() : own.shown());
  }

  private LearnerModel model(Concept concept) {
    LearnerModel known = models.getIfPresent(concept);
    if (known == null) {
      renew();
      known = models.getIfPresent(concept);
    }
    return known == null ? Frequencies.of(beliefs(concept, List.of()), List.of()) : known;
  }

  private void renew() {
    List<LearnerSums> latest = responses.latestSums(LEARNERS);
    for (Concept each : Concept.values()) {
      List<ConceptSums> all = new ArrayList<>();
      for (LearnerSums learner : latest) {
        ConceptSums sums = learner.concepts().get(each.id());
        if (sums != null) {
          all.add(sums);
        }
      }
      models.put(each, Frequencies.of(beliefs(each, all), all));
    }
  }

  private static List<String> beliefs(Concept concept, List<ConceptSums> met) {
    SortedSet<String> names = new TreeSet<>();
    Misconception.about(concept).forEach(each -> names.add(each.id()));
    met.forEach(each -> names.addAll(each.shown().beliefs().keySet()));
    return List.copyOf(names);
  }
}
