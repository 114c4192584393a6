/** The server: its routes and who may take them, its guards, and how it says no. */
@NullMarked
package withy.web;

import org.jspecify.annotations.NullMarked;
