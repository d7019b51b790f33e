/**
 * The book: a folder with one SQLite file, or a PostgreSQL database, that holds all that the shop knows of its cars.
 * It hands out its ledgers, which stand in the packages below, and nothing else knows SQL. Readings are append-only, and what was
 * acknowledged is on the disk.
 */
@NullMarked
package cornerbook.app.book;

import org.jspecify.annotations.NullMarked;
