package cornerbook.app.desk.out;

import java.nio.file.Path;
import java.time.Instant;

/** How far taking the book out is. */
public sealed interface OutState {
    /** Nothing is asked for, or what was made is removed. */
    record None() implements OutState {}

    /** It is being made; {@code done} of {@code all} cars are written. */
    record Making(OutKind kind, boolean withNames, int done, int all) implements OutState {}

    /**
     * It is whole.
     *
     * @param left cars that could not be written, as the program has a fault with them
     */
    record Made(OutKind kind, boolean withNames, Path file, long bytes, Instant at, int left) implements OutState {
        private static final double BYTES_OF_MB = 1e6;

        /** In millions of bytes. */
        public double megabytes() {
            return bytes / BYTES_OF_MB;
        }
    }

    /** It could not be made; the log has it by that id. */
    record Failed(OutKind kind, String faultId) implements OutState {}
}
