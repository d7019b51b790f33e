/**
 * How well people read, from grooves that were read twice with no distance between: a set that came off in spring and goes on in
 * autumn. Nobody has to measure anything for it. It knows persons and depths, and no car. Method and sources in
 * docs/methods/reread.md.
 */
@NullMarked
package cornerbook.core.reread;

import org.jspecify.annotations.NullMarked;
