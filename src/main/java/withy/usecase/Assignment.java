package withy.usecase;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import withy.core.item.Composition;

/**
 * A drill that a class was asked to do.
 *
 * @param title empty when it was given none
 * @param due null when there is no hurry; answers after it are taken all the same
 */
public record Assignment(
    String id,
    String schoolClass,
    String title,
    Composition composition,
    @Nullable Instant due,
    Instant assignedAt) {}
