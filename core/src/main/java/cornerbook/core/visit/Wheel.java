package cornerbook.core.visit;

import org.jspecify.annotations.Nullable;

/** A rim with its tyre, known by the tag that hangs on it, and the identity of its pressure sensor, if it has one. */
public record Wheel(String tag, Tyre tyre, @Nullable String sensorId) {}
