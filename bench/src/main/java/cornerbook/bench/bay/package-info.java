/** How long a reading takes from a tablet into the book, with many tablets at once; see docs/benchmarks.md. */
@NullMarked
package cornerbook.bench.bay;

import org.jspecify.annotations.NullMarked;
