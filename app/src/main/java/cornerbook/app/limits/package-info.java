/**
 * The limits file: what law and practice ask of tread, pads and tyre age, by jurisdiction and season, each row with its
 * citation. It is data, so that a change of law needs no change of the program. Core gets the rows as values. And what tells one
 * program that judges by them from another.
 */
@NullMarked
package cornerbook.app.limits;

import org.jspecify.annotations.NullMarked;
