/**
 * A car as the book has it: what it is, its owner, its wheel sets and their fittings, and its visits with readings and
 * tools. Of what is put right the book keeps what stood there.
 */
@NullMarked
package cornerbook.app.book.car;

import org.jspecify.annotations.NullMarked;
