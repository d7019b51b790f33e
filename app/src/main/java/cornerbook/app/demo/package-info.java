/**
 * An invented shop with twelve invented cars over six seasons, so that every page has something to show. The readings
 * follow from a simple truth (wear per corner and distance) with the error of a gauge on top. The same day always gives
 * the same shop.
 */
@NullMarked
package cornerbook.app.demo;

import org.jspecify.annotations.NullMarked;
