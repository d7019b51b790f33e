/**
 * The air in a tyre: its pressure at another temperature, what load asks of it, how fast it is lost, and the sensor that
 * watches it. It knows tyres by their load index, and neither cars nor visits. Method and sources in
 * docs/methods/tyre.md.
 */
@NullMarked
package cornerbook.core.air;

import org.jspecify.annotations.NullMarked;
