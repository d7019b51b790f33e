/**
 * How long the wear model takes. Run with {@code java -cp ... org.openjdk.jmh.Main}; see docs/benchmarks.md. Figures are
 * for one core, warm.
 */
@NullMarked
package cornerbook.bench.wear;

import org.jspecify.annotations.NullMarked;
