/**
 * What a light of a navigation mark does: its character, as charts and light lists write it, and
 * its timeline.
 */
@org.jspecify.annotations.NullMarked
package withy.core.light;
