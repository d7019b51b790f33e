/**
 * Judges tread: brings the wear model to the wheel sets of a car, and says when a groove reaches its limit and what its
 * pattern of wear tells. It knows wheels, readings and limits. What the model itself does stands in
 * cornerbook.core.tread.
 */
@NullMarked
package cornerbook.core.tread.judge;

import org.jspecify.annotations.NullMarked;
