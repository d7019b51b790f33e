package cornerbook.app.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.record.VisitNotes;
import cornerbook.core.assess.Assessment;
import cornerbook.core.car.DataGap;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
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

    /** A customer who reads that a pad is good and has to be replaced believes neither. */
    @Test
    void whatIsReplacedWithItsWornMateIsNotToldToBeGood() throws IOException {
        var worn = finding(at(Subject.Part.SHOE, Corner.RR), Verdict.UNSAFE, "Too thin.")
                .todo(Todo.Action.REPLACE_PAIR);
        var mate = finding(at(Subject.Part.SHOE, Corner.LR), Verdict.HOLDS, "Thick.");
        var words = SheetCars.words(SheetCars.withFindings(SheetCars.finished(), List.of(worn, mate)));
        assertThat(words).contains("Too thin.").doesNotContain("Shoes: LR");
        assertThat(SheetCars.words(SheetCars.withFindings(SheetCars.finished(), List.of(mate))))
                .contains("Shoes: LR");
    }

    @Test
    void theTorqueOfAWheelWithADamagedStudIsNotToldToBeGood() throws IOException {
        var stud = finding(at(Subject.Part.WHEEL_FASTENERS, Corner.RR), Verdict.UNSAFE, "A stud is damaged.")
                .todo(Todo.Action.REPAIR);
        var torque = List.of(
                finding(at(Subject.Part.WHEEL_TORQUE, Corner.RR), Verdict.HOLDS, "Tight."),
                finding(at(Subject.Part.WHEEL_TORQUE, Corner.LR), Verdict.HOLDS, "Tight."),
                stud);
        assertThat(SheetCars.words(SheetCars.withFindings(SheetCars.finished(), torque)))
                .contains("A stud is damaged.", "Wheel torque: LR.");
    }

    /** Brakes, torque, treads and air: a long list of one does not take the first page from the others. */
    @Test
    void theFirstPageNamesOneOfEachThatNobodyCouldJudge() throws IOException {
        var car = SheetCars.finished();
        var notJudged = List.<Said>of(
                new DataGap(DataGap.Part.BRAKE, Axle.FRONT),
                new DataGap(DataGap.Part.BRAKE, Axle.REAR),
                new DataGap(DataGap.Part.FASTENER, null),
                new DataGap(DataGap.Part.PLACARD_PRESSURE, null),
                new DataGap(DataGap.Part.TYRE, null));
        var words = SheetCars.words(SheetCars.with(car, car.history(), car.visit(), car.findings(), notJudged));
        assertThat(words.substring(0, words.indexOf("For the record")).replaceAll("\\s+", " "))
                .contains(
                        "Brakes of the front axle not known",
                        "Wheel nuts or bolts not known",
                        "Tyres not known",
                        "Placard pressure of both axles not known");
    }

    private static Subject at(Subject.Part part, Corner corner) {
        return new Subject(part, corner, null, null);
    }

    private static Finding finding(Verdict verdict, String plainWords) {
        return finding(new Subject(Subject.Part.BATTERY, null, null, null), verdict, plainWords);
    }

    private static Finding finding(Subject subject, Verdict verdict, String plainWords) {
        return new Finding(
                subject,
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
