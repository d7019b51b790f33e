/**
 * Pictures of wheel fasteners and wrenches.
 */
@NullMarked
package cornerbook.app.picture.torque;

import org.jspecify.annotations.NullMarked;
