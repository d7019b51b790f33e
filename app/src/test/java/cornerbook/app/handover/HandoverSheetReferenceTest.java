package cornerbook.app.handover;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.demo.DemoShop;
import cornerbook.core.visit.Assessment;
import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

/** The sheet against veraPDF, a validator of ISO 19005-2 (PDF/A-2, level A) and ISO 14289-1 (PDF/UA-1). */
class HandoverSheetReferenceTest {
    @BeforeAll
    static void useTheParserOfVeraPdf() {
        VeraGreenfieldFoundryProvider.initialise();
    }

    static Stream<Arguments> sheets() {
        var cars = SheetCars.lastVisits();
        var sheets = List.of(
                cars.getFirst(),
                cars.get(2),
                SheetCars.ofCustomer(SheetCars.finished(), "Жанна Ъгловая-Щука, Żółć Ğüneş, Ngô Thị Hồng, 漢字 \u0627"));
        return sheets.stream()
                .flatMap(sheet -> Stream.of(PDFAFlavour.PDFA_2_A, PDFAFlavour.PDFUA_1)
                        .map(flavour -> Arguments.of(sheet, flavour)));
    }

    @ParameterizedTest(name = "{index} {1}")
    @MethodSource("sheets")
    void theSheetConforms(Assessment assessment, PDFAFlavour flavour) throws Exception {
        var pdf = HandoverSheet.render(assessment, DemoShop.NAME, SheetCars.NOW);
        try (var parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
                var validator = Foundries.defaultInstance().createValidator(flavour, false)) {
            var result = validator.validate(parser);
            assertThat(result.getTotalAssertions()).isPositive();
            assertThat(result.getTestAssertions())
                    .filteredOn(assertion -> assertion.getStatus() == TestAssertion.Status.FAILED)
                    .extracting(assertion -> assertion.getRuleId() + " " + assertion.getMessage())
                    .isEmpty();
            assertThat(result.isCompliant()).isTrue();
        }
    }
}
