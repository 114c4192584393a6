package withy.core.simulation;

import withy.core.measurement.Outcome;

/**
 * What the test of readiness comes to.
 *
 * @param notReady exactly, for one who is right in .60 of all items
 * @param ready exactly, for one who is right in .85
 * @param mixed exactly, for one who knows all concepts but two, by the share of a blueprint's items
 *     that such planted learners get right
 * @param blueprint share called ready of such planted learners by a blueprint's items
 * @param adaptive share called ready of the same by items that follow what is least settled: they
 *     are no sample of the subject, and so no test may be fed with them
 */
public record ReadinessFigures(
    Outcome notReady, Outcome ready, Outcome mixed, double blueprint, double adaptive) {}
