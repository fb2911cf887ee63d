/**
 * From files to scenarios. Every fault is told with its file, line and column, the value found, the range allowed and
 * a next step.
 */
@NullMarked
package longnight.scenario;

import org.jspecify.annotations.NullMarked;
