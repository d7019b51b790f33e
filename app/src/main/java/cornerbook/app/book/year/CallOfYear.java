package cornerbook.app.book.year;

import cornerbook.app.book.visit.CallAnswer;

/**
 * What a call came to.
 *
 * @param visit by which it is known what was asked; its day is that of the call at the shop
 * @param about name of a matter for which a car is to come, or of a part that is ordered
 */
public record CallOfYear(VisitOfYear visit, String about, CallAnswer.Kind answer) {}
