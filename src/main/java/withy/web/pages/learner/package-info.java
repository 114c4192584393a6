/** The pages of a learner: join, drill, feedback, where they stand. */
@NullMarked
package withy.web.pages.learner;

import org.jspecify.annotations.NullMarked;
