/**
 * The pages of the store: its places and what lies there, sets in and out by scan, the walk to fetch the sets of a day, counts, and
 * sets that nobody fetched.
 */
@NullMarked
package cornerbook.app.desk.store;

import org.jspecify.annotations.NullMarked;
