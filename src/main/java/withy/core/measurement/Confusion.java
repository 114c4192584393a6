package withy.core.measurement;

/**
 * One kind of mark taken for another.
 *
 * @param shown the kind shown
 * @param answered the kind it was taken for
 * @param learners how many learners took it so
 * @param times in how many answers
 * @param offered how many answers had both among the options
 * @param adjustedP chance that so many slip into it, adjusted for all pairs offered
 * @param listed whether it is more than slips
 */
public record Confusion(
    String shown,
    String answered,
    int learners,
    int times,
    int offered,
    double adjustedP,
    boolean listed) {}
