package cornerbook.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.record.VisitNotes;
import cornerbook.app.book.work.Remark;
import cornerbook.words.Reader;
import java.io.IOException;
import java.time.Instant;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class HandoverRemarksTest {
    @Test
    void complaintAndDamageStandOnTheSheetAndNotesOfTheStepsDoNot() throws IOException {
        var remarks = List.of(
                remark("r1", Remark.Topic.COMPLAINT, "Pulls"),
                remark("r2", Remark.Topic.COMPLAINT, "Pulls to the left"),
                remark("r3", Remark.Topic.ARRIVAL_DAMAGE, "Scratch on the left door"),
                remark("r4", Remark.Topic.BRAKE_LF, "Bolt was hard to move"));
        var notes =
                new VisitNotes(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), remarks, List.of());
        var pdf = SheetCars.sheet(SheetCars.finished(), notes, Reader.DEFAULT);
        try (var document = Loader.loadPDF(pdf)) {
            var text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            assertThat(text)
                    .contains("Customer’s complaint Pulls to the left", "Damage on arrival Scratch on the left door")
                    .doesNotContain("hard to move");
        }
    }

    private static Remark remark(String id, Remark.Topic topic, String words) {
        return new Remark(id, topic, words, "Ada", Instant.parse("2026-11-25T09:41:00Z"));
    }
}
