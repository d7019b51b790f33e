package cornerbook.app.handover;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.demo.DemoShop;
import cornerbook.core.visit.Assessment;
import cornerbook.core.visit.Assessor;
import cornerbook.core.visit.CarHistory;
import cornerbook.core.visit.Limit;
import cornerbook.core.visit.Visit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class HandoverSheetTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final Instant NOW = Instant.parse("2026-11-25T10:00:00Z");
    private static final Assessor ASSESSOR = new Assessor(List.of(
            new Limit("*", Limit.Kind.TREAD_LEGAL, null, 1.6, null, null, "house rule"),
            new Limit("*", Limit.Kind.TREAD_SEASON, null, 4.0, null, null, "house rule"),
            new Limit("*", Limit.Kind.PAD_LEGAL, null, 1.6, null, null, "house rule")));

    static List<Assessment> lastVisits() {
        return DemoShop.histories(TODAY).stream()
                .map(history ->
                        ASSESSOR.assess(history, history.visits().getLast().id()))
                .toList();
    }

    private static String text(PDDocument document) throws IOException {
        return new PDFTextStripper().getText(document);
    }

    /** ISO 19005-2, 6.2.11.4.1 fonts embedded, 6.6.4 identification, 6.7 logical structure. */
    @ParameterizedTest
    @MethodSource("lastVisits")
    void theSheetIsATaggedArchiveDocumentOfTwoPagesAtMost(Assessment assessment) throws IOException {
        var pdf = HandoverSheet.render(assessment, DemoShop.NAME, NOW);
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
                    .contains(assessment.nextVisit().toString())
                    .doesNotContain("#");
            var retorque = assessment.retorque();
            if (retorque != null) {
                assertThat(words)
                        .contains("%.0f km".formatted(retorque.dueOdometerKm()))
                        .contains(retorque.dueDate().toString());
            }
        }
    }

    @Test
    void atLeastOneCarOfTheDemonstrationHasARetorqueDue() {
        assertThat(lastVisits()).anyMatch(assessment -> assessment.retorque() != null);
    }

    @Test
    void overlongInputIsCutSoThatTwoPagesHold() throws IOException {
        var base = lastVisits().getFirst();
        var visit = base.visit();
        var flooded = new Visit(
                visit.id(),
                visit.date(),
                visit.odometerKm(),
                visit.technician(),
                visit.arrivedOn(),
                visit.leftOn(),
                visit.readings(),
                IntStream.range(0, 400)
                        .mapToObj(i -> "work <b>&" + "much ".repeat(80))
                        .toList(),
                "note \u0001\uD800 ".repeat(2000),
                visit.nextVisitDue());
        var findings = Collections.nCopies(300, base.findings().getFirst());
        var history = base.history();
        var assessment = new Assessment(
                new CarHistory(history.vehicle(), history.customer(), history.sets(), List.of(flooded)),
                flooded,
                base.nextVisit(),
                findings,
                base.forecasts(),
                base.plan(),
                base.retorque(),
                Collections.nCopies(300, "not judged ".repeat(60)));
        try (var document = Loader.loadPDF(HandoverSheet.render(assessment, "Shop", NOW))) {
            assertThat(document.getNumberOfPages()).isLessThanOrEqualTo(2);
            assertThat(text(document))
                    .contains("more, see the findings on screen")
                    .contains("work <b>&");
        }
    }
}
