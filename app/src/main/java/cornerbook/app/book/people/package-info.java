/**
 * Who works on tablets, and which tablets are paired.
 */
@NullMarked
package cornerbook.app.book.people;

import org.jspecify.annotations.NullMarked;
