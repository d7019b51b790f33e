/**
 * The vehicle identification number. Its form is checked, its check digit is reported, because only North America asks for
 * one. Rule and sample: 49 CFR 565.
 */
@NullMarked
package cornerbook.core.vehicle;

import org.jspecify.annotations.NullMarked;
