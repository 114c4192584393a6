package withy.web.pages.instructor;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What readiness drills found of a learner.
 *
 * @param found by the latest, with its answers; null where none was begun
 * @param gate what holds the learner back, each with the answers on it
 */
public record Judged(String nickname, @Nullable Linked found, List<Linked> gate) {}
