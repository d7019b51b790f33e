/**
 * How long the brake models take, and the seizing hazard beside R's survreg on the same 50 000 visits. Data are invented.
 */
@NullMarked
package cornerbook.bench.brake;

import org.jspecify.annotations.NullMarked;
