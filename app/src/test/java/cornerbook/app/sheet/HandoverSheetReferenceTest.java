package cornerbook.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.limits.LimitsFile;
import cornerbook.app.sheet.label.LabelPaper;
import cornerbook.app.sheet.label.LabelPlace;
import cornerbook.app.sheet.label.WheelLabels;
import cornerbook.app.sheet.label.WheelTags;
import cornerbook.core.assess.Assessment;
import cornerbook.core.assess.Assessor;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.words.Language;
import cornerbook.words.Reader;
import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

/** The sheet and the tags against veraPDF, a validator of ISO 19005-2 (PDF/A-2, level A) and ISO 14289-1 (PDF/UA-1). */
class HandoverSheetReferenceTest {
    private static final Reader FRENCH = Reader.DEFAULT.in(Language.FRENCH);

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
        assertConforms(SheetCars.sheet(assessment), flavour);
    }

    @ParameterizedTest
    @EnumSource(
            value = PDFAFlavour.class,
            names = {"PDFA_2_A", "PDFUA_1"})
    void theSheetWithPhotosConforms(PDFAFlavour flavour) throws Exception {
        var pdf = SheetCars.sheet(SheetCars.finished(), PhotosSectionTest.notes(4), FRENCH);
        assertConforms(pdf, flavour);
    }

    @ParameterizedTest
    @EnumSource(
            value = PDFAFlavour.class,
            names = {"PDFA_2_A", "PDFUA_1"})
    void theTagsConform(PDFAFlavour flavour) throws Exception {
        var history = SheetCars.finished().history();
        var visit = history.visits().getLast();
        var assessor = new Assessor(LimitsFile.load());
        var plan = assessor.plan(history, visit.id());
        var stored = assessor.planStored(history, visit.id());
        assertConforms(WheelTags.render(history, visit, plan, stored, Map.of(), WheelTags.Paper.ROLL, FRENCH), flavour);
        assertConforms(
                WheelTags.render(history, visit, plan, stored, Map.of(), WheelTags.Paper.A4, Reader.DEFAULT), flavour);
        var tag = new WheelLabels.Tag(
                "08W1",
                "QX 0008",
                SeasonKind.WINTER,
                null,
                Corner.RF,
                List.of(OptionalDouble.of(5.2), OptionalDouble.empty(), OptionalDouble.of(5.0)),
                null,
                "205/55R16");
        assertConforms(WheelLabels.render(List.of(tag), LabelPlace.of(LabelPaper.A4_2_BY_7), Reader.DEFAULT), flavour);
    }

    private static void assertConforms(byte[] pdf, PDFAFlavour flavour) throws Exception {
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
