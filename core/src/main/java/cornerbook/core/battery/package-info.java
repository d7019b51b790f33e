/**
 * The 12 V battery: state of charge from voltage at rest, state of health from a measured against a rated current,
 * ratings by several standards, days parked. It
 * knows chemistries by their published tables only. Method in docs/methods/battery.md.
 */
@NullMarked
package cornerbook.core.battery;

import org.jspecify.annotations.NullMarked;
