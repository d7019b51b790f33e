/** How long the program takes until it answers, beside the least that a web server of the JDK takes. */
@NullMarked
package cornerbook.bench.start;

import org.jspecify.annotations.NullMarked;
