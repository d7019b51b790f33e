/**
 * What customers were told that work would cost, and what they said to it. Nothing of it is ever changed or erased but the name of who
 * agreed, where a person asks to be forgotten; a later estimate or agreement adds.
 */
@NullMarked
package cornerbook.app.book.estimate;

import org.jspecify.annotations.NullMarked;
