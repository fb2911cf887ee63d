/**
 * What cloth does to heat, wind and vapour, one law to a class. Plain functions of numbers in SI; they know no garment
 * and no body.
 */
@NullMarked
package longnight.clothing.law;

import org.jspecify.annotations.NullMarked;
