package cornerbook.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.bay.Departure;
import cornerbook.app.book.bay.ReadingAuthor;
import cornerbook.app.book.record.VisitNotes;
import cornerbook.app.book.work.Declined;
import cornerbook.app.book.work.WorkTick;
import cornerbook.app.cars.CarLibrary;
import cornerbook.app.desk.asked.Slot;
import cornerbook.core.assess.Assessment;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.JobCard;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Said;
import cornerbook.words.Language;
import cornerbook.words.Reader;
import java.io.IOException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Page one is for the customer, page two for the day on which somebody asks what was found and how it was left. */
class HandoverPagesTest {
    private static final Reader TORONTO = Reader.DEFAULT.at(ZoneId.of("America/Toronto"));

    /** 08:05 at the shop. */
    private static final Instant BEGUN = Instant.parse("2026-11-20T13:05:00Z");

    /** 10 mm: what a printer may leave white. */
    private static final double MARGIN_POINTS = 28;

    private static final Letterhead SHOP =
            new Letterhead("Garage of invented things", "12, rue du Cric, Val-Ombrelune", "418-555-0142", true);

    private static List<String> pages(Assessment assessment, VisitNotes notes, Reader reader) throws IOException {
        var pdf = HandoverSheet.render(assessment, SHOP, SheetCars.NOW, notes, List.of(), reader);
        try (var document = Loader.loadPDF(pdf)) {
            var pages = new ArrayList<String>();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                var stripper = new PDFTextStripper();
                stripper.setSortByPosition(true);
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(stripper.getText(document).replaceAll("\\s+", " ").replace('\u00a0', ' '));
            }
            return pages;
        }
    }

    /** French words are longer: a column that does not fit is cut at the edge of the paper. */
    @ParameterizedTest
    @ValueSource(strings = {"piston-seized", "slide-pins-seized-freed-today", "piston-and-pad-seized"})
    void nothingStandsOverTheRightEdge(String car) throws IOException {
        var assessment = CarLibrary.assess(CarLibrary.car(CarLibrary.text(car)));
        var pdf = HandoverSheet.render(
                assessment, SHOP, SheetCars.NOW, VisitNotes.NONE, List.of(), TORONTO.in(Language.FRENCH));
        try (var document = Loader.loadPDF(pdf)) {
            double widthPoints = document.getPage(0).getMediaBox().getWidth();
            var stripper = new PDFTextStripper() {
                private int glyphs;

                @Override
                protected void processTextPosition(TextPosition glyph) {
                    glyphs++;
                    assertThat(glyph.getXDirAdj() + glyph.getWidthDirAdj())
                            .as(glyph.getUnicode())
                            .isLessThan((float) (widthPoints - MARGIN_POINTS));
                }
            };
            stripper.getText(document);
            assertThat(stripper.glyphs).isGreaterThan(500);
        }
    }

    private static VisitNotes notes(
            Assessment assessment, List<WorkTick> ticks, List<Departure> departures, List<Declined> declined) {
        var authors = new ArrayList<ReadingAuthor>();
        for (var reading : assessment.visit().readings()) {
            authors.add(new ReadingAuthor(reading.id(), "Ada", BEGUN.plusSeconds(60L * authors.size())));
        }
        return new VisitNotes(ticks, List.of(), List.of(), departures, List.of(), authors, List.of(), declined);
    }

    private static VisitNotes handedOver(Assessment assessment) {
        return notes(assessment, List.of(), List.of(departure()), List.of());
    }

    private static Departure departure(Departure.Reason... reasons) {
        return new Departure(
                "left",
                "Bo",
                Instant.parse("2026-11-20T16:30:00Z"),
                List.of(reasons),
                reasons.length == 0 ? null : "Mme Ardent");
    }

    @Test
    void theCustomerReadsWhatWasDoneWhatIsDueAndWhomToCall() throws IOException {
        var assessment = SheetCars.finished();
        var pages = pages(assessment, handedOver(assessment), TORONTO);
        assertThat(pages).hasSize(2);
        assertThat(pages.getFirst())
                .contains("12, rue du Cric, Val-Ombrelune · 418-555-0142")
                .contains("Nothing that was judged is unsafe")
                .contains("What must be done, and by when", "Order new tyres", "before it goes on again")
                .contains("What was done", "Winter set fitted in place of the summer set")
                .contains("Wheels tightened again at 50 769 km, about 23 Nov 2026")
                .containsPattern("Next visit 15 Apr 2027, at about \\d\\d \\d00 km")
                .contains("slow moderately from 65 to 15 km/h")
                .doesNotContain("Draft", "VIN", "Cautions");
    }

    /** A tablet knows who works on it; the desk's field for the technician stays empty where nobody is asked. */
    @Test
    void whoEnteredIsNamedWhereNoTechnicianIs() throws IOException {
        var base = SheetCars.finished();
        var card = base.visit().card();
        var nobody = SheetCars.ofVisit(
                base,
                base.visit()
                        .withCard(new JobCard(null, card.workDone(), card.notes(), card.nextVisitDue(), card.tools())));
        var pages = pages(nobody, handedOver(nobody), TORONTO);
        assertThat(pages.getLast()).contains("Entered by", "Ada, Bo").doesNotContain("Technician");
        assertThat(String.join(" ", pages)).contains("Entered by: Ada, Bo");
        assertThat(pages(nobody, VisitNotes.NONE, TORONTO).getLast())
                .contains("Technician")
                .doesNotContain("Entered by");
    }

    @Test
    void theRecordHasFoundAndLeftSideBySide() throws IOException {
        var assessment = SheetCars.finished();
        var record = pages(assessment, handedOver(assessment), TORONTO).getLast();
        assertThat(record)
                .contains("For the record", "VIN", "Odometer", "50 689 km")
                // Wheel and tyre, tread last time and now, pressure set, torque.
                .contains("LF 02W3, 205/55R16 7.3 / 7.1 / 7.2 mm, 16 Apr 2026 7.2 / 7.2 / 7.2 mm – 246 kPa 121 N·m")
                .contains("came off LF 02S3, 205/55R16 6.3 / 6.3 / 6.2 mm, 16 Apr 2026 5.1 / 5.2 / 5.1 mm 217 kPa – –")
                .contains(
                        "Wheel torque asked by the manufacturer: 120 N·m. Wrench W-2, Old wrench (invented), to be set to 120 N·m for it; its calibration is due 11 Oct 2026.")
                .contains("RR 6.4 / 8.3 mm as found seized / free free seized 25.45 mm as found")
                .contains("Never hang a caliper by its hose")
                .contains("vehicle's specification; house rule");
    }

    @Test
    void partsThatWereReplacedAreNewAndNoThicknessIsClaimed() throws IOException {
        var base = SheetCars.finished();
        var readings = new ArrayList<>(base.visit().readings());
        readings.add(reading("new-pads", Measure.PADS_REPLACED, Corner.RR, null, 1, "done"));
        readings.add(reading("new-disc", Measure.DISC_REPLACED, Corner.RR, null, 1, "done"));
        var assessment = SheetCars.ofVisit(base, base.visit().withReadings(readings));
        assertThat(pages(assessment, VisitNotes.NONE, TORONTO).getLast())
                .contains("RR 6.4 / 8.3 mm new seized / free free seized 25.45 mm new");
    }

    @Test
    void timesAreThoseOfTheShopWithTheirOffset() throws IOException {
        var assessment = SheetCars.finished();
        var pages = pages(assessment, handedOver(assessment), TORONTO);
        assertThat(pages.getLast())
                .contains("Pressures 08:05–09:22", "Hand over 11:30", "Times by the tablets’ clocks, UTC\u221205:00.")
                .contains("Made on 25 Nov 2026, 05:00, UTC\u221205:00.");
        assertThat(String.join(" ", pages)).doesNotContain("10:00", " UTC.");
    }

    @Test
    void whatWasDeclinedNamesWhoSaidSoAndWhen() throws IOException {
        var assessment = SheetCars.finished();
        var advice = assessment.advice().getFirst();
        var no = new Declined("d1", advice.key(), "Order new tyres. The summer set", true, "Mme Ardent", "Ada", BEGUN);
        var yes = new Declined("d2", "PAD.RR", "Free the pads", true, "Mme Ardent", "Ada", BEGUN);
        var after = new Declined("d3", "PAD.RR", "Free the pads", false, "Mme Ardent", "Ada", BEGUN);
        var notes = notes(assessment, List.of(), List.of(departure()), List.of(no, yes, after));
        assertThat(pages(assessment, notes, TORONTO).getFirst())
                .contains(
                        "Not wanted by the customer Order new tyres. The summer set Declined by Mme Ardent, 20 Nov 2026, 08:05; written down by Ada")
                .doesNotContain("Free the pads");
    }

    @Test
    void whatTheCarLeftWithIsToldInTheLanguageOfTheCustomer() throws IOException {
        var base = SheetCars.finished();
        var unsafe = new Finding(
                        new Subject(Subject.Part.PAD, Corner.LF, null, null),
                        Verdict.UNSAFE,
                        Said.verbatim("Plaquettes AVG 0,5 mm"),
                        Said.verbatim("Les plaquettes de frein sont usées."),
                        null,
                        null,
                        0,
                        List.of(),
                        Said.verbatim("law"))
                .todo(Todo.Action.REPLACE_PAIR);
        var assessment = SheetCars.withFindings(base, List.of(unsafe));
        var reason = new Departure.Reason("UNSAFE.PAD.LF", "LF pads 0.5 mm.", "Pièces demain.");
        var notes = notes(assessment, List.of(), List.of(departure(reason)), List.of());
        assertThat(pages(assessment, notes, TORONTO.in(Language.FRENCH)).getFirst())
                .contains("Dangereux : ne conduisez pas ce véhicule dans cet état.")
                .contains(
                        "Laissé en suspens par Bo : Plaquettes AVG 0,5 mm. Pièces demain. Personne avisée : Mme Ardent.")
                .doesNotContain("LF pads", "Brouillon");
    }

    @Test
    void aVisitOnlyBegunIsADraftAndSaysInAFewLinesWhatWasNotLookedAt() throws IOException {
        var begun = SheetCars.lastVisits().stream()
                .filter(assessment -> assessment.history().vehicle().id().equals("demo-08"))
                .findFirst()
                .orElseThrow();
        var pages = pages(begun, VisitNotes.NONE, TORONTO);
        assertThat(pages).hasSize(2);
        assertThat(pages.getFirst())
                .contains("Draft: not ready to leave", "No work is recorded, and nobody has handed the car over.")
                .contains("LF pads: thickness not measured (likewise: RF, LR, RR)")
                .contains("Parking brake: whether it holds was not tried")
                .doesNotContain("12 V battery: voltage");
        assertThat(pages.getLast())
                .contains("What else could not be judged")
                .containsSubsequence("Brake fluid: age", "12 V battery: voltage at rest not measured")
                .doesNotContain("LF pads: thickness not measured");
    }

    /** Seen before: "All that was judged is good" over "torque again, now", of a wheel at 133 of 140 N·m. */
    @ParameterizedTest
    @CsvSource({
        "sound-car, true",
        "torque-a-little-low-at-one-wheel, false",
        "battery-low-at-rest, false",
        "torque-high-at-one-wheel, false"
    })
    void nothingIsCalledGoodWhileSomethingHasToBeDoneNow(String name, boolean good) throws IOException {
        var car = CarLibrary.assess(CarLibrary.car(CarLibrary.text(name)));
        var page = pages(car, handedOver(car), TORONTO).getFirst();
        assertThat(page.contains("All that was judged is good")).isEqualTo(good);
        assertThat(page).doesNotContain("may not last until the next visit.");
    }

    /** What holds is not told in the words of a fault. */
    @Test
    void noDamageIsCalledGood() throws IOException {
        var car = CarLibrary.assess(CarLibrary.car(CarLibrary.text("puncture-repaired")));
        var page = pages(car, handedOver(car), TORONTO).getFirst();
        assertThat(page).contains("Tyres looked over: ").doesNotContain("Tyre damage");
    }

    /** A reason to let it go does not make good what it left with. */
    @ParameterizedTest
    @ValueSource(strings = {"brake-fluid-changed-pedal-not-pumped", "bracket-bolts-not-torqued"})
    void nothingIsCalledGoodWhereTheCarLeftWithSomethingOpen(String name) throws IOException {
        var car = CarLibrary.assess(CarLibrary.car(CarLibrary.text(name)));
        var reasons = car.open().stream()
                .map(point -> new Departure.Reason(point.key(), TORONTO.say(point), "No time today"))
                .toArray(Departure.Reason[]::new);
        var page = pages(car, notes(car, List.of(), List.of(departure(reasons)), List.of()), TORONTO)
                .getFirst();
        assertThat(page)
                .contains("something was left open, and stands below", "No time today")
                .doesNotContain("All that was judged is good", "Draft");
    }

    /** A car with more faults than a page has room for: what is unsafe stays whole, the rest follows on page two. */
    @ParameterizedTest
    @EnumSource(Language.class)
    void pageOneOfAVeryBadCarIsTheCustomersWholePage(Language language) throws IOException {
        var car = CarLibrary.assess(CarLibrary.car(CarLibrary.text("many-faults-at-once")));
        var findings = new ArrayList<>(car.findings());
        for (int i = 0; i < 30; i++) {
            findings.add(finding(
                    i < 4 ? Verdict.UNSAFE : Verdict.SPENT,
                    "Faute %d %s".formatted(i, "et encore ".repeat(12)),
                    "Fin %d.".formatted(i)));
        }
        var bad = SheetCars.withFindings(car, findings);
        var declined = new Declined("d1", "PAD.LF.REPLACE_PAIR", "Plaquettes", true, "M. Tambrec", "Bo", BEGUN);
        var reader = TORONTO.in(language);
        var pages = pages(bad, notes(bad, List.of(), List.of(), List.of(declined)), reader);
        var labels = reader.labels(SheetPage.ROOM);
        assertThat(pages.getFirst())
                .contains("418-555-0142", "12, rue du Cric", "M. Tambrec", reader.day(bad.nextVisit()))
                .contains(labels.of("what-was-done"), labels.of("declined"), labels.of("please-mind"))
                .contains("Fin 0.", "Fin 1.", "Fin 2.", "Fin 3.")
                .containsPattern("[0-9]+ (more things, less urgent|autres points, moins urgents)")
                .doesNotContain("Fin 29.");
        assertThat(pages).hasSize(2);
        assertThat(pages.getLast())
                .contains(labels.of("for-the-record").replace('\u00a0', ' '))
                .contains(labels.of("also-to-be-done"));
    }

    private static Finding finding(Verdict verdict, String words, String end) {
        return new Finding(
                new Subject(Subject.Part.BATTERY, null, null, null),
                verdict,
                Said.verbatim("title"),
                Said.verbatim(words + end),
                null,
                null,
                0,
                List.of(),
                Said.verbatim("house rule"));
    }

    /** Nothing was fitted and nothing repaired, and no tablet took part: a name stands under it, and the day is over. */
    @Test
    void anInspectionTypedAtTheDeskIsNoDraft() {
        assertThat(open(inspection("Ada"), VisitNotes.NONE)).isEmpty();
        assertThat(open(inspection(null), VisitNotes.NONE)).hasSize(1);
        var atATablet = inspection("Ada");
        assertThat(open(atATablet, notes(atATablet, List.of(), List.of(), List.of())))
                .hasSize(1);
    }

    private static List<String> open(Assessment assessment, VisitNotes notes) {
        return new SheetPage(
                        assessment,
                        SheetCars.SHOP,
                        SheetCars.NOW,
                        notes,
                        List.of(),
                        SheetRoom.TRIED.getFirst(),
                        TORONTO)
                .open();
    }

    private static Assessment inspection(@Nullable String technician) {
        var sound = CarLibrary.car(CarLibrary.text("sound-car"));
        var visits = new ArrayList<>(sound.visits());
        var last = visits.removeLast();
        visits.add(new Visit(
                last.id(),
                last.date(),
                last.odometerKm(),
                last.arrivedOn(),
                Map.of(),
                last.readings().stream()
                        .filter(reading -> reading.measure() == Measure.TREAD_DEPTH)
                        .toList(),
                new JobCard(technician, List.of(), "", null, List.of()),
                Set.of()));
        return CarLibrary.assess(new CarHistory(sound.vehicle(), sound.customer(), sound.sets(), visits));
    }

    @Test
    void whereverACaliperWasOffTheCustomerIsToldHowToBedTheBrakesIn() throws IOException {
        var base = SheetCars.finished();
        var lubricated = reading("pins", Measure.PIN_LUBRICANT, Corner.LF, null, 1, "rubber-safe grease");
        var looked = reading("pad", Measure.PAD_THICKNESS, Corner.LF, Spot.INNER, 8, "8 mm");
        assertThat(pages(
                                SheetCars.ofVisit(base, base.visit().withReadings(List.of(lubricated))),
                                VisitNotes.NONE,
                                TORONTO)
                        .getFirst())
                .contains("After the work on the brakes: where traffic allows, slow moderately");
        assertThat(pages(SheetCars.ofVisit(base, base.visit().withReadings(List.of(looked))), VisitNotes.NONE, TORONTO)
                        .getFirst())
                .doesNotContain("After the work on the brakes");
    }

    @Test
    void afterTheShopsOwnDriveTheCustomerIsNotAskedToDriveItAgain() throws IOException {
        var assessment = SheetCars.finished();
        var driven = new WorkTick("t1", WorkTick.BURNISHED, null, WorkTick.Answer.DONE, true, List.of(), "Bo", BEGUN);
        assertThat(pages(assessment, notes(assessment, List.of(driven), List.of(departure()), List.of()), TORONTO)
                        .getFirst())
                .contains("After the work on the brakes: we have driven the stops that bed them in.")
                .doesNotContain("slow moderately");
    }

    /** In the customer's language, whoever said it in whatever language; what was read since is not open. */
    @Test
    void whatHandsLeftOpenStandsOnTheSheetWithItsReason() throws IOException {
        var assessment = SheetCars.finished();
        var left = leftOpen("BATTERY_CAPACITY...", "TOOL_MISSING");
        assertThat(pages(assessment, notes(assessment, List.of(left), List.of(departure()), List.of()), TORONTO)
                        .getFirst())
                .contains(
                        "The car left with this open",
                        "Left open by Bo: Battery capacity: not done. A tool is missing.");
        assertThat(pages(assessment, notes(assessment, List.of(left), List.of(), List.of()), TORONTO)
                        .getFirst())
                .contains("Left open", "Battery capacity: not done.")
                .doesNotContain("The car left with this open");
        var read = assessment.visit().readings().getFirst();
        var done = leftOpen(new Slot(read.measure(), read.corner(), read.wheelTag(), read.spot()).key(), "NO_TIME");
        assertThat(pages(assessment, notes(assessment, List.of(done), List.of(departure()), List.of()), TORONTO)
                        .getFirst())
                .doesNotContain("Left open by Bo");
    }

    /** The hand that could not close it and the person who let the car go say one thing. */
    @Test
    void whatTheCarWasLetGoWithIsToldOnce() throws IOException {
        var finished = SheetCars.finished();
        var assessment = SheetCars.ofVisit(
                finished,
                finished.visit()
                        .withReadings(finished.visit().readings().stream()
                                .filter(reading -> reading.measure() != Measure.BRACKET_BOLTS_TORQUED)
                                .toList()));
        var gone = new Departure(
                "d2",
                "Bo",
                BEGUN,
                List.of(
                        new Departure.Reason("BRACKET.LF", "The bracket bolts at LF are not torqued.", "No bolt"),
                        new Departure.Reason("PEDAL", "The pedal was not pumped.", "No bolt")),
                null);
        assertThat(pages(
                                assessment,
                                notes(
                                        assessment,
                                        List.of(leftOpen("BRACKET_BOLTS_TORQUED.RF..", "PART_MISSING")),
                                        List.of(gone),
                                        List.of()),
                                TORONTO)
                        .getFirst())
                .contains(
                        "Left open by Bo: The bracket bolts at LF are not torqued. The pedal was not pumped. No bolt.")
                .contains("Left open by Bo: Bracket bolts torqued (RF): not done. A part is missing.");
        assertThat(pages(
                                assessment,
                                notes(
                                        assessment,
                                        List.of(leftOpen("BRACKET_BOLTS_TORQUED.LF..", "PART_MISSING")),
                                        List.of(gone),
                                        List.of()),
                                TORONTO)
                        .getFirst())
                .containsOnlyOnce("Left open by Bo");
    }

    private static WorkTick leftOpen(String what, String reason) {
        return new WorkTick("t1", what, null, new WorkTick.Answer(false, reason), true, List.of(), "Bo", BEGUN);
    }

    @Test
    void aGaugesDigitsStandAsItShowedThem() {
        var exact = new Reading("r", Measure.PAD_THICKNESS, Corner.LF, null, Spot.INNER, 8.25, "8.25 mm", null, null);
        var inches =
                new Reading("r", Measure.PAD_THICKNESS, Corner.LF, null, Spot.INNER, 7.9375, "10/32 in", null, null);
        assertThat(ReadValue.of(exact, Reader.DEFAULT)).isEqualTo("8.25\u00a0mm");
        assertThat(ReadValue.of(inches, Reader.DEFAULT)).isEqualTo("7.9\u00a0mm");
    }

    private static Reading reading(
            String id, Measure measure, Corner corner, @Nullable Spot spot, double value, String written) {
        return new Reading(id, measure, corner, null, spot, value, written, null, null);
    }
}
