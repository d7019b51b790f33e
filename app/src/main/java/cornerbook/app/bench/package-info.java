/**
 * The engineering bench: what each calculator asks, and its answers from what a person wrote. The command line has each
 * question as an option and the pages as a field, and both give these answers, so that they never differ. It computes
 * nothing itself; the formulas are core's.
 */
@NullMarked
package cornerbook.app.bench;

import org.jspecify.annotations.NullMarked;
