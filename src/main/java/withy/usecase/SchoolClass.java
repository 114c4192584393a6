package withy.usecase;

import org.jspecify.annotations.Nullable;
import withy.core.mark.Practice;

/**
 * A class of learners.
 *
 * @param practice the rule book under which it is taught
 * @param code with which learners join
 * @param instructor whose it is; null until somebody sets the server up
 */
public record SchoolClass(
    String id, String name, Practice practice, String code, @Nullable String instructor) {}
