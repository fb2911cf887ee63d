/**
 * Published experiments and what the engine makes of them: the experiment as data, its runs, readings and bands, and the score.
 * Knows no file; the same model and experiment give the same figures.
 */
@NullMarked
package longnight.proof;

import org.jspecify.annotations.NullMarked;
