/**
 * The person and the laws of a resting body in the cold: heat made, shivering, blood withheld from the skin, breath.
 * Knows nothing of what the person wears or where they lie.
 */
@NullMarked
package longnight.body;

import org.jspecify.annotations.NullMarked;
