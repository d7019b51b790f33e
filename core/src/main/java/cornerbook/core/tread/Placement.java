package cornerbook.core.tread;

import cornerbook.core.corner.Corner;

/** A tyre, what it has run until now, and the corner where it runs from now on. */
public record Placement(int tyre, CornerDistances run, Corner corner) {}
