/** Keeps everything in one H2 database: one class for each port, and copies of the whole. */
@NullMarked
package withy.store;

import org.jspecify.annotations.NullMarked;
