/**
 * The store: a folder with one SQLite file that holds customers, cars, wheels, visits, readings, fittings and open
 * re-torques. It is the only room that knows SQL. Readings are append-only, and what was acknowledged is on the disk.
 */
@NullMarked
package cornerbook.app.book;

import org.jspecify.annotations.NullMarked;
