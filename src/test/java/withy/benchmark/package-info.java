/** How fast it is. */
package withy.benchmark;
