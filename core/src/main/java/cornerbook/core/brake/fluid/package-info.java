/**
 * Brake fluid: grades with their boiling points, and when it is changed. It knows no car. Sources in
 * docs/methods/brakes.md.
 */
@NullMarked
package cornerbook.core.brake.fluid;

import org.jspecify.annotations.NullMarked;
