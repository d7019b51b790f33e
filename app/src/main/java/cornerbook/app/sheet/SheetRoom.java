package cornerbook.app.sheet;

import java.util.List;

/**
 * How much the sheet tells, so that it keeps to its pages: the customer's whole page first, the record after it.
 *
 * @param findings most lines on the first page of what is to be done; the others follow on the second
 * @param lines most lines of every other list of the first page
 * @param holding whether what holds is told by area, or only counted
 * @param record how much the record tells
 */
record SheetRoom(int findings, int lines, boolean holding, OfRecord record) {
    /**
     * The room of the record.
     *
     * @param lines most lines of every list
     * @param pictures whether the brakes are drawn as well
     * @param everything whether every reading is told, and the sources of what holds
     */
    record OfRecord(int lines, boolean pictures, boolean everything) {}

    private static final OfRecord WHOLE = new OfRecord(12, true, true);

    /** In the order that they are tried until the first page holds: what holds gives way before anything that does not. */
    static final List<SheetRoom> TRIED = List.of(
            new SheetRoom(40, 12, true, WHOLE),
            new SheetRoom(40, 6, true, WHOLE),
            new SheetRoom(40, 6, false, WHOLE),
            new SheetRoom(24, 3, false, WHOLE),
            new SheetRoom(12, 2, false, WHOLE),
            new SheetRoom(6, 2, false, WHOLE),
            new SheetRoom(3, 1, false, WHOLE),
            new SheetRoom(0, 1, false, WHOLE));

    /** In the order that they are tried until the sheet keeps to its pages. */
    private static final List<OfRecord> SHORTER_RECORDS = List.of(
            new OfRecord(12, false, true),
            new OfRecord(12, false, false),
            new OfRecord(6, false, false),
            new OfRecord(3, false, false),
            new OfRecord(1, false, false));

    /** The same first page with ever less of a record. */
    List<SheetRoom> withLessRecord() {
        return SHORTER_RECORDS.stream()
                .map(each -> new SheetRoom(findings, lines, holding, each))
                .toList();
    }
}
