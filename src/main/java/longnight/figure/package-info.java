/**
 * Small numerical shapes that every room shares: smooth switches, curves through points, ranges. No physics lives here
 * and no unit; what a curve means is for the room that draws it.
 */
@NullMarked
package longnight.figure;

import org.jspecify.annotations.NullMarked;
