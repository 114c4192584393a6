/** The program: the command line that puts the parts together. */
@NullMarked
package withy;

import org.jspecify.annotations.NullMarked;
