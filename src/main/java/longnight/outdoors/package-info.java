/**
 * The place, the shelter and the course of the night, and how a surface loses heat to them: wind, sky, ground, rain.
 * Knows nothing of the person.
 */
@NullMarked
package longnight.outdoors;

import org.jspecify.annotations.NullMarked;
