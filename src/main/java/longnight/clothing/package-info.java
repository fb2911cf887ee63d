/**
 * Garments, layers and outfits, and what cloth does to heat, wind and water. Knows nothing of who wears it or of the
 * weather.
 */
@NullMarked
package longnight.clothing;

import org.jspecify.annotations.NullMarked;
