/**
 * Moist air and water: the few laws that the body, its clothing and the world outside must agree on. Vapour that one
 * room gives away and another receives is reckoned with the same law, or the ledger would not close.
 */
@NullMarked
package longnight.air;

import org.jspecify.annotations.NullMarked;
