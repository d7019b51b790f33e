package cornerbook.app.book.year;

import cornerbook.core.corner.Corner;

/**
 * Pads of one brake that were tried by hand at a visit and of which some did not move.
 *
 * @param seized 1 and more
 * @param tried with those that moved
 */
public record SeizedPads(VisitOfYear visit, Corner corner, int seized, int tried) {}
