/**
 * The laws by which a surface outdoors loses heat: wind near the ground, moving air, sky, snow, contact, rain; and what
 * the night itself does. Plain numbers in and out, no site, no series.
 */
@NullMarked
package longnight.outdoors.law;

import org.jspecify.annotations.NullMarked;
