/** All that was measured and done, car after car, for other programs: with what was corrected, moved and cancelled since. */
@NullMarked
package cornerbook.app.book.out;

import org.jspecify.annotations.NullMarked;
