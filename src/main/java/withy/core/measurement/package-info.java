/**
 * What the responses of a class say: weak concepts, the state of each learner, confusions, item
 * facility.
 *
 * <p>Its one library is Apache Commons Statistics, for the quantiles of the beta distribution and
 * the tail of the binomial one.
 */
@NullMarked
package withy.core.measurement;

import org.jspecify.annotations.NullMarked;
