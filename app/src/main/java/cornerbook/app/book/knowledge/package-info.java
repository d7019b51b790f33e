/**
 * What was learned from all cars, kept until it is learned anew.
 */
@NullMarked
package cornerbook.app.book.knowledge;

import org.jspecify.annotations.NullMarked;
