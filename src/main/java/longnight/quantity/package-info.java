/**
 * The closed table of units: "100 g/m2" to SI and back. The only place that knows ounces and miles; beyond it
 * everything is a plain double in SI, with the unit in its name.
 */
@NullMarked
package longnight.quantity;

import org.jspecify.annotations.NullMarked;
