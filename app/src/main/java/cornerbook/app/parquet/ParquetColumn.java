package cornerbook.app.parquet;

/** A column of a table; a value of it may be missing. */
public record ParquetColumn(String name, Kind kind) {
    private static final int BOOLEAN = 0;
    private static final int INT32 = 1;
    private static final int INT64 = 2;
    private static final int DOUBLE = 5;
    private static final int BYTE_ARRAY = 6;

    /** What its values are, with the number of the physical type in the file (parquet.thrift, {@code Type}). */
    public enum Kind {
        /** {@link String}. */
        TEXT(BYTE_ARRAY),
        /** {@link Double}. */
        NUMBER(DOUBLE),
        /** {@link Integer}. */
        WHOLE(INT32),
        /** {@link Boolean}. */
        FLAG(BOOLEAN),
        /** {@link java.time.LocalDate}. */
        DAY(INT32),
        /** {@link java.time.Instant}, to the microsecond. */
        MOMENT(INT64);

        private final int physical;

        Kind(int physical) {
            this.physical = physical;
        }

        int physical() {
            return physical;
        }
    }
}
