/**
 * What the engine takes for granted, each with its number, its range and where it comes from. A law that needs a
 * constant asks here for it, so that every guess of the engine can be listed, printed and doubted in one place.
 */
@NullMarked
package longnight.assumption;

import org.jspecify.annotations.NullMarked;
