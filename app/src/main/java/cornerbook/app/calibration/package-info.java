/**
 * Whether the forecasts keep what they promise. Compares what the wear model expected of each car's last readings with
 * what was read, on simulated cars whose truth is known and on the cars of a book, and writes a page with pictures.
 */
@NullMarked
package cornerbook.app.calibration;

import org.jspecify.annotations.NullMarked;
