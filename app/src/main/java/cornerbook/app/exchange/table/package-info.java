/** The book as flat tables for other programs, as Parquet or comma-separated files; what their columns are stands in docs/tables.md. */
@NullMarked
package cornerbook.app.exchange.table;

import org.jspecify.annotations.NullMarked;
