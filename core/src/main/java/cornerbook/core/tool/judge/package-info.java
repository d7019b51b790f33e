/**
 * Judges the tools that a visit used: whether each was within its calibration, and its readings within its range. It
 * knows visits and readings. The tools themselves stand in cornerbook.core.tool.
 */
@NullMarked
package cornerbook.core.tool.judge;

import org.jspecify.annotations.NullMarked;
