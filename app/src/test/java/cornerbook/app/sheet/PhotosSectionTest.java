package cornerbook.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.photo.KeptPhoto;
import cornerbook.app.book.photo.Photo;
import cornerbook.app.book.record.VisitNotes;
import cornerbook.app.photo.Photos;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Subject;
import cornerbook.words.Reader;
import java.io.IOException;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PhotosSectionTest {
    private static final int PHOTO_MOST_BYTES = 40_000;

    static VisitNotes notes(int count) {
        var photos = IntStream.range(0, count)
                .mapToObj(i -> new KeptPhoto(
                        new Photo(
                                "p" + i,
                                Corner.LF,
                                Subject.Part.DISC,
                                "Ada",
                                Instant.parse("2026-11-25T09:41:00Z"),
                                i != 1),
                        Photos.patches(i, 1600, 1200)))
                .toList();
        return new VisitNotes(List.of(), List.of(), List.of(), List.of(), photos, List.of(), List.of(), List.of());
    }

    /** One of them is not chosen. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 4, 10, 14})
    void chosenPhotosStandSmallOnTheSheetWithCornerAndTime(int count) throws IOException {
        var pdf = SheetCars.sheet(SheetCars.finished(), notes(count), Reader.DEFAULT);
        int chosen = count == 1 ? 1 : count - 1;
        var without = SheetCars.sheet(SheetCars.finished());
        assertThat(pdf.length - without.length).isLessThan(Math.min(chosen, 12) * PHOTO_MOST_BYTES);
        try (var document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isLessThanOrEqualTo(3);
            var text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            assertThat(text.split("25 Nov 2026, 09:41, Ada", -1)).hasSize(Math.min(chosen, 12) + 1);
            assertThat(text.contains("more; the shop")).isEqualTo(chosen > 12);
            var pictures = new HashSet<Integer>();
            for (var page : document.getPages()) {
                for (var name : page.getResources().getXObjectNames()) {
                    if (page.getResources().getXObject(name) instanceof PDImageXObject image) {
                        pictures.add(System.identityHashCode(image.getCOSObject()));
                        assertThat(Math.max(image.getWidth(), image.getHeight()))
                                .isLessThanOrEqualTo(420);
                    }
                }
            }
            assertThat(pictures).hasSize(Math.min(chosen, 12));
        }
    }
}
