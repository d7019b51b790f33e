/**
 * Units at the edge: reads what people write ("32 psi", "9/32 in", "98 lbf·ft", "-8 °C") into the book's units, and
 * shows values with their unit. Units go by their UCUM names through a units library; nothing inside core converts
 * anything. Method in docs/methods/quantity.md.
 */
@NullMarked
package cornerbook.core.quantity;

import org.jspecify.annotations.NullMarked;
