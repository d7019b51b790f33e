package cornerbook.app.sheet;

import cornerbook.app.book.photo.KeptPhoto;
import cornerbook.app.book.photo.Photo;
import cornerbook.app.photo.PhotoIntake;
import cornerbook.words.Labels;
import cornerbook.words.Reader;
import java.util.Base64;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The photos that were chosen for the sheet: small, four to a row, each with what it shows and when.
 *
 * @param more how many belong on the shop's screen
 */
public record PhotosSection(List<List<Shown>> rows, int more) {
    /** A page of them. */
    private static final int MOST = 12;

    private static final int IN_A_ROW = 4;
    /** 41 mm at some 200 dots per inch: enough to know what is seen, and a few tens of kB. */
    private static final int LONG_SIDE_PX = 320;

    public PhotosSection {
        rows = rows.stream().map(List::copyOf).toList();
    }

    /**
     * One of them.
     *
     * @param base64 the JPEG
     */
    public record Shown(String base64, String what, String moment) {}

    public static PhotosSection of(List<KeptPhoto> photos, Reader reader) {
        var labels = reader.labels(SheetPage.ROOM);
        var shown = photos.stream()
                .limit(MOST)
                .map(kept -> new Shown(
                        Base64.getEncoder()
                                .encodeToString(PhotoIntake.reduced(kept.jpeg(), LONG_SIDE_PX)
                                        .content()),
                        what(kept.photo(), labels, reader),
                        labels.of(
                                "photo-moment",
                                "moment",
                                kept.photo().madeAt(),
                                "person",
                                kept.photo().person().isEmpty()
                                        ? null
                                        : kept.photo().person())))
                .toList();
        var rows = IntStream.range(0, Math.ceilDiv(shown.size(), IN_A_ROW))
                .mapToObj(row -> shown.subList(row * IN_A_ROW, Math.min(shown.size(), (row + 1) * IN_A_ROW)))
                .toList();
        return new PhotosSection(rows, photos.size() - shown.size());
    }

    /** How many places of its last row are left free. */
    public int free(List<Shown> row) {
        return IN_A_ROW - row.size();
    }

    private static String what(Photo photo, Labels labels, Reader reader) {
        var part = photo.part();
        var corner = photo.corner();
        var where = corner == null ? labels.of("the-car") : CornersSection.name(corner, reader);
        return part == null ? where : where + ", " + FindingsSection.part(part, labels);
    }
}
