/** The pages of an instructor: account, classes, composing a drill, the review. */
@NullMarked
package withy.web.pages.instructor;

import org.jspecify.annotations.NullMarked;
