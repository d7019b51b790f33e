/**
 * Who works on tablets, which tablets are paired, and whose appointments calendars may read.
 */
@NullMarked
package cornerbook.app.book.people;

import org.jspecify.annotations.NullMarked;
