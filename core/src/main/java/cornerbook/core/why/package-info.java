/**
 * Why a number is what it is: the steps of a calculation with their formulas and sources. Every calculator's result
 * carries them, so that page, command line and JSON explain a number in the same words. It computes nothing itself.
 */
@NullMarked
package cornerbook.core.why;

import org.jspecify.annotations.NullMarked;
