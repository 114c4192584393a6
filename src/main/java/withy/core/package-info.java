/**
 * The rules of the subject, pure: no input or output, no clock, no framework, chance only from a
 * seed.
 */
@NullMarked
package withy.core;

import org.jspecify.annotations.NullMarked;
