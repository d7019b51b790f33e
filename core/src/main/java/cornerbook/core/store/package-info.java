/**
 * The map of a store: racks with their places, which place a set goes to, and the shortest way to fetch some. It knows no car; what lies
 * at a place is a number of sets. Method and sources in docs/methods/walk.md.
 */
@NullMarked
package cornerbook.core.store;

import org.jspecify.annotations.NullMarked;
