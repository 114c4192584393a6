package withy.core.mark;

/**
 * The rules by which a mark is told from others.
 *
 * @param look by its colours, near by
 * @param silhouette by its shape, from afar
 * @param light by its light
 */
public record Telling(MarkRule look, MarkRule silhouette, MarkRule light) {}
