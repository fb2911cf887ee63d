/**
 * Questions that take more than one night to answer. The only room with threads and the only one with chance, and its seed is
 * printed with every answer.
 *
 * <p>{@link longnight.study.Draws} are models: every constant of body, clothing and outdoors that is not exactly known
 * ({@link longnight.study.Factor}) taken from its published range, both laws of shivering, and by how much the model misses
 * besides. A {@link longnight.study.Band} is a night under all of them. Two kits that are to be compared are run under the same
 * draws and compared draw by draw: what both share then drops out.
 *
 * <p>{@link longnight.study.SpreadStudy} draws people and forecasts as well, and asks which of all that opens the answer most.
 *
 * <p>Every share and every quantile here is one of the model, that is of how well its own constants are known. None is a chance
 * of a person, and no text may make one of it.
 */
@NullMarked
package longnight.study;

import org.jspecify.annotations.NullMarked;
