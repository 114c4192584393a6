/** One situation on the water: a boat, her heading, the marks she sees, drawn from a seed. */
@NullMarked
package withy.core.scenario;

import org.jspecify.annotations.NullMarked;
