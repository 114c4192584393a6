package withy.usecase;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.time.Duration;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import withy.core.measurement.FormSums;
import withy.core.measurement.LearnerSums;
import withy.core.measurement.RapidAnswers;

/**
 * How long a class takes for items of each form. It changes slowly, so it is looked up now and then
 * and not for every answer.
 */
final class FormTimes {
  private static final Duration KEPT = Duration.ofMinutes(10);
  private static final int CLASSES = 1_000;

  /** From so many answers on it is known how long a form takes. */
  private static final int ANSWERS = 20;

  private final Responses responses;
  private final Cache<String, Map<String, Double>> means =
      Caffeine.newBuilder().expireAfterWrite(KEPT).maximumSize(CLASSES).build();

  FormTimes(Responses responses) {
    this.responses = responses;
  }

  /** Whether an answer came too fast for the item to have been read. */
  boolean isRapid(String schoolClass, String form, long shownMillis) {
    Map<String, Double> ofClass = means.get(schoolClass, this::looked);
    return RapidAnswers.isRapid(shownMillis, ofClass == null ? null : ofClass.get(form));
  }

  /** Null, which is not kept, while too little is known. */
  private @Nullable Map<String, Double> looked(String schoolClass) {
    Map<String, FormSums> all = new TreeMap<>();
    for (LearnerSums learner : responses.sums(schoolClass)) {
      learner.forms().forEach((form, sums) -> all.merge(form, sums, FormSums::plus));
    }
    Map<String, Double> looked = new TreeMap<>();
    all.forEach(
        (form, sums) -> {
          if (sums.answers() >= ANSWERS) {
            looked.put(form, (double) sums.shownMillis() / sums.answers());
          }
        });
    return looked.isEmpty() ? null : looked;
  }
}
