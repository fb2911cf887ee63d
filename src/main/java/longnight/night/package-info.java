/**
 * One night: body, clothing and world compiled into a network of nodes, stepped from dusk to dawn, with a ledger in which
 * every joule is entered twice. Takes a scenario, gives a result; no file, no clock, no chance.
 */
@NullMarked
package longnight.night;

import org.jspecify.annotations.NullMarked;
