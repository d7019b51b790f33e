/**
 * What people say of a visit beside its readings: steps that were ticked, remarks, work that the customer declined; and which stand.
 */
@NullMarked
package cornerbook.app.book.work;

import org.jspecify.annotations.NullMarked;
