/**
 * What the reader gets: charts, pages, tables and data. Cautions are part of every result, and no form of output may
 * leave them out.
 */
@NullMarked
package longnight.report;

import org.jspecify.annotations.NullMarked;
