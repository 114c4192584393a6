/**
 * What instructors and learners do, a verb and a noun each, and the ports that they need; the one
 * place with a clock and with new seeds.
 */
@NullMarked
package withy.usecase;

import org.jspecify.annotations.NullMarked;
