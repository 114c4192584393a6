/** What scripts and the learner's page ask of the server, in JSON. */
@NullMarked
package withy.web.api;

import org.jspecify.annotations.NullMarked;
