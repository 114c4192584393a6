/** The pages for people: what every page has in common, and the templates that make them text. */
@NullMarked
package withy.web.pages;

import org.jspecify.annotations.NullMarked;
