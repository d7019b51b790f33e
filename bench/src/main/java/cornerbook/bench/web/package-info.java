/** How long each page takes. Figures are for a server on a shared machine, warm; see docs/benchmarks.md. */
@NullMarked
package cornerbook.bench.web;

import org.jspecify.annotations.NullMarked;
