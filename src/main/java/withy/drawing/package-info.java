/** Pictures of marks, scenes and plots as SVG text, pure like the core that they show. */
@NullMarked
package withy.drawing;

import org.jspecify.annotations.NullMarked;
