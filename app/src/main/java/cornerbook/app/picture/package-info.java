/**
 * What pictures are drawn with, as SVG text that screen and hand-over sheet share; the pictures stand by subject in the
 * packages below. They use presentation attributes only, so that they look the same in a browser and in a PDF, and are
 * well-formed XML. They draw what an assessment holds and compute nothing but coordinates.
 */
@NullMarked
package cornerbook.app.picture;

import org.jspecify.annotations.NullMarked;
