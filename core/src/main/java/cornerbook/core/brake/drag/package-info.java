/**
 * What a brake that drags takes, from how warm its disc is after a drive. It knows discs and speeds, and no car. Method and
 * sources in docs/methods/brakes.md.
 */
@NullMarked
package cornerbook.core.brake.drag;

import org.jspecify.annotations.NullMarked;
