/** Turns what the core says into text in a person's language, out of the message bundles. */
@NullMarked
package withy.wording;

import org.jspecify.annotations.NullMarked;
