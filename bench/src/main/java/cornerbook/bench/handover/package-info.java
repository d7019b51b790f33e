/** How long the hand-over sheet takes. Figures are for one core, warm; see docs/benchmarks.md. */
@NullMarked
package cornerbook.bench.handover;

import org.jspecify.annotations.NullMarked;
