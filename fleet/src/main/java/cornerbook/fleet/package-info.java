/**
 * The cars of many shops in one night, on Apache Spark. What is learned and what is forecast is the core's, by the same calls as for a
 * book: nothing is computed here but sums over cars. Between machines travel texts and rows, never objects of the core.
 */
@NullMarked
package cornerbook.fleet;

import org.jspecify.annotations.NullMarked;
