/** The open formats in which work goes in and out. */
@NullMarked
package withy.exchange;

import org.jspecify.annotations.NullMarked;
