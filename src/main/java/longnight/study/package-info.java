/**
 * Questions that take more than one night to answer: compare, coldest, least, spread. The only room with threads and
 * the only one with chance, and its seed is printed with every answer.
 */
@NullMarked
package longnight.study;

import org.jspecify.annotations.NullMarked;
