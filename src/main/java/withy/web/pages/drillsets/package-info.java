/** The pages of the drill sets that an instructor keeps, and of those that there are besides. */
@NullMarked
package withy.web.pages.drillsets;

import org.jspecify.annotations.NullMarked;
