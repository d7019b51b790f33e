/**
 * The threaded fasteners that hold a wheel: clamp load from torque and friction, what a lubricated thread does to it, the
 * wrench's setting with an adapter, the torque bar's band, the order of tightening, the wrench's next calibration. The
 * vehicle maker's torque outranks every number here. Method and sources in docs/methods/torque.md.
 */
@NullMarked
package cornerbook.core.torque;

import org.jspecify.annotations.NullMarked;
