package cornerbook.app.sheet;

import java.util.List;

/**
 * How much the sheet tells, so that it keeps to its pages.
 *
 * @param findings most lines of findings that do not hold
 * @param lines most lines of every other list
 * @param holding whether what holds is told by area, or only counted
 * @param pictures whether the brakes are drawn as well
 * @param everything whether every reading is told, and the sources of what holds
 * @param apart whether the record begins a page of its own
 */
record SheetRoom(int findings, int lines, boolean holding, boolean pictures, boolean everything, boolean apart) {
    /** In the order that they are tried: what holds gives way before anything that does not. */
    static final List<SheetRoom> TRIED = List.of(
            new SheetRoom(40, 12, true, true, true, true),
            new SheetRoom(40, 12, true, false, true, true),
            new SheetRoom(40, 12, true, false, false, true),
            new SheetRoom(40, 6, true, false, false, true),
            new SheetRoom(40, 6, false, false, false, true),
            new SheetRoom(40, 3, false, false, false, false),
            new SheetRoom(24, 2, false, false, false, false),
            new SheetRoom(12, 2, false, false, false, false),
            new SheetRoom(6, 1, false, false, false, false));
}
