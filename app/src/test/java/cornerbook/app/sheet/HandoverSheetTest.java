package cornerbook.app.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.record.VisitNotes;
import cornerbook.core.assess.Assessment;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import cornerbook.words.Reader;
import cornerbook.words.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class HandoverSheetTest {
    static List<Assessment> lastVisits() {
        return SheetCars.lastVisits();
    }

    private static String text(PDDocument document) throws IOException {
        return new PDFTextStripper().getText(document);
    }

    /** ISO 19005-2, 6.2.11.4.1 fonts embedded, 6.6.4 identification, 6.7 logical structure. */
    @ParameterizedTest
    @MethodSource("lastVisits")
    void theSheetIsATaggedArchiveDocumentOfTwoPagesAtMost(Assessment assessment) throws IOException {
        var pdf = SheetCars.sheet(assessment);
        Files.write(Path.of("target", "sheet-" + assessment.visit().id() + ".pdf"), pdf);
        try (var document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isBetween(1, 2);
            for (var page : document.getPages()) {
                for (var name : page.getResources().getFontNames()) {
                    assertThat(page.getResources().getFont(name).isEmbedded()).isTrue();
                }
            }
            var catalog = document.getDocumentCatalog();
            assertThat(catalog.getMarkInfo().isMarked()).isTrue();
            assertThat(catalog.getStructureTreeRoot()).isNotNull();
            assertThat(catalog.getLanguage()).isEqualTo("en");
            assertThat(catalog.getOutputIntents()).hasSize(1);
            var metadata = new String(catalog.getMetadata().toByteArray(), UTF_8);
            assertThat(metadata).containsPattern("pdfaid:part(>|=\")2").containsPattern("pdfaid:conformance(>|=\")A");
            var words = text(document);
            assertThat(words)
                    .contains(assessment.history().vehicle().plate())
                    .contains("Invented data")
                    .contains(Reader.DEFAULT.day(assessment.nextVisit()))
                    .contains("The vehicle manufacturer's data outrank this sheet")
                    .doesNotContain("#", "\u25a1")
                    .doesNotContainPattern("\\d{4}-\\d{2}-\\d{2}");
            var retorque = assessment.retorque();
            if (retorque != null) {
                assertThat(words)
                        .contains(Reader.DEFAULT
                                .say(Amount.of(retorque.dueOdometerKm(), "km"))
                                .replace('\u202f', '\u00a0'))
                        .contains(Reader.DEFAULT.day(retorque.dueDate()));
            }
        }
    }

    @Test
    void atLeastOneCarOfTheDemonstrationHasARetorqueDue() {
        assertThat(lastVisits()).anyMatch(assessment -> assessment.retorque() != null);
    }

    @Test
    void overlongInputIsCutSoThatTwoPagesHold() throws IOException {
        var base = SheetCars.finished();
        var work = IntStream.range(0, 400)
                .mapToObj(i -> "work <b>&" + "much ".repeat(80))
                .toList();
        var visit = SheetCars.visit(base.visit(), base.visit().readings(), work, "note \u0001\uD800 ".repeat(2000));
        var flooded = SheetCars.with(
                base,
                base.history(),
                visit,
                base.findings(),
                Collections.nCopies(300, Said.verbatim("not judged ".repeat(60))));
        try (var document = Loader.loadPDF(SheetCars.sheet(flooded))) {
            assertThat(document.getNumberOfPages()).isLessThanOrEqualTo(2);
            assertThat(text(document)).contains("more; the shop has all of them on its screen", "work <b>&");
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 12, 18, 22, 26, 30, 40})
    void whatHoldsGivesWayBeforeAnythingThatDoesNot(int count) throws IOException {
        var holding = IntStream.range(0, 20).mapToObj(i -> finding(Verdict.HOLDS, "Good thing " + i + "."));
        var spent = IntStream.range(0, count)
                .mapToObj(i -> finding(Verdict.SPENT, "Used up thing %d ".formatted(i) + "and more ".repeat(18) + "."));
        var unsafe = Stream.of(finding(Verdict.UNSAFE, "Dangerous thing."));
        var findings =
                Stream.of(holding, spent, unsafe).flatMap(stream -> stream).toList();
        var pdf = SheetCars.sheet(SheetCars.withFindings(SheetCars.finished(), findings));
        try (var document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isLessThanOrEqualTo(2);
            var words = text(document);
            assertThat(words.indexOf("Dangerous thing")).isBetween(0, words.indexOf("Used up thing"));
            boolean holdingIsTold = words.contains("Good thing");
            assertThat(holdingIsTold || words.contains("20 findings; the shop has them on its screen"))
                    .isTrue();
            if (holdingIsTold) {
                assertThat(IntStream.range(0, count)).allMatch(i -> words.contains("Used up thing %d ".formatted(i)));
            }
        }
    }

    @Test
    void twoHundredGraveFindingsAreCutBehindTheGravest() throws IOException {
        var base = SheetCars.finished();
        var findings = Stream.concat(
                        IntStream.range(0, 200).mapToObj(i -> finding(Verdict.SPENT, "Used up thing %d.".formatted(i))),
                        Stream.of(finding(Verdict.UNSAFE, "Dangerous thing.")))
                .toList();
        var pdf = SheetCars.sheet(SheetCars.withFindings(base, findings));
        try (var document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isLessThanOrEqualTo(2);
            assertThat(text(document)).contains("Dangerous thing", "more; the shop has all of them on its screen");
        }
    }

    private static Finding finding(Verdict verdict, String plainWords) {
        return new Finding(
                new Subject(Subject.Part.BATTERY, null, null, null),
                verdict,
                Said.verbatim("title"),
                Said.verbatim(plainWords),
                null,
                null,
                0,
                List.of(),
                Said.verbatim("house rule"));
    }

    @Test
    void theSheetIsPrintedInTheUnitsOfWhoAsks() throws IOException {
        var pdf = SheetCars.sheet(SheetCars.finished(), VisitNotes.NONE, Reader.DEFAULT.in(UnitSystem.US));
        try (var document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isLessThanOrEqualTo(2);
            assertThat(new PDFTextStripper().getText(document).replaceAll("\"[^\"]*\"", ""))
                    .containsPattern("[0-9][\\s\u00a0\u202f]psi")
                    .doesNotContainPattern("[0-9][\\s\u00a0\u202f](kPa|N·m|km|kg)\\b");
        }
    }
}
