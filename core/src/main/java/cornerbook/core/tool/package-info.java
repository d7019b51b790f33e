/**
 * The tools of a shop as far as judging asks for them: wrenches, gauges and hoists with their calibration. It knows no
 * visit. What a wrench or a hoist can do stands in cornerbook.core.torque and cornerbook.core.lift.
 */
@NullMarked
package cornerbook.core.tool;

import org.jspecify.annotations.NullMarked;
