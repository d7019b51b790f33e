package cornerbook.app.desk.estimate;

import cornerbook.app.book.estimate.EstimateLine;

/**
 * A line that an estimate may have.
 *
 * @param chosen whether it is on the estimate unless somebody says otherwise
 */
record DraftLine(EstimateLine line, boolean chosen) {}
