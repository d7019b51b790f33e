/** How the pages of a book get slower while it grows. */
@NullMarked
package cornerbook.bench.grow;

import org.jspecify.annotations.NullMarked;
