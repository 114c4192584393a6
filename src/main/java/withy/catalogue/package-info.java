/** Reads what instructors author: drill sets, out of JSON files. */
@NullMarked
package withy.catalogue;

import org.jspecify.annotations.NullMarked;
