/** All pages for people, brought together. */
@NullMarked
package withy.web.site;

import org.jspecify.annotations.NullMarked;
