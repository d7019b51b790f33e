/**
 * Writes tables as Apache Parquet files, so that other programs read a large book without this one. It writes what the format asks
 * of a flat table and no more: text, numbers, days, moments and flags, each of which may be missing. Nothing of it is loaded before a
 * table is taken out.
 */
@NullMarked
package cornerbook.app.parquet;

import org.jspecify.annotations.NullMarked;
