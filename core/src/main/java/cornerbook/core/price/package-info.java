/**
 * What work costs: labour from minutes and an hourly rate, taxes on the sum of the lines, what is paid in cash, and how far work may
 * go beyond what was agreed. It knows no car and no place; the taxes and rules of places are data of who calls. Money is Joda-Money,
 * which keeps decimals exactly, refuses to mix currencies and to round unasked, and needs nothing but the JDK; the other library of
 * that kind, JSR 354 with Moneta, finds its parts by service loaders and configuration files, which this house has no use for. Method
 * and sources in docs/methods/tax.md.
 */
@NullMarked
package cornerbook.core.price;

import org.jspecify.annotations.NullMarked;
