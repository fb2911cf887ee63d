/**
 * The command line: commands, exit codes, the console. The only main and the only place that ends the process.
 */
@NullMarked
package longnight.cli;

import org.jspecify.annotations.NullMarked;
