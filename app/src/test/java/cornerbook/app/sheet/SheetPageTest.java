package cornerbook.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.estimate.Agreement;
import cornerbook.app.book.estimate.FreeReason;
import cornerbook.app.book.estimate.WorkTold;
import cornerbook.app.book.record.VisitNotes;
import cornerbook.app.book.work.Remark;
import cornerbook.core.assess.Assessment;
import cornerbook.core.assess.NamedCorner;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.CornerName;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.SetSpan;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.release.ChargedWork;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Price;
import cornerbook.core.say.Said;
import cornerbook.words.Language;
import cornerbook.words.Reader;
import java.time.Instant;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SheetPageTest {
    private static final String BURNISH = "slow moderately from 65 to 15\u00a0km/h";

    private static String page(Assessment assessment) {
        return page(assessment, Reader.DEFAULT);
    }

    private static String page(Assessment assessment, Reader reader) {
        return new SheetPage(
                        assessment,
                        SheetCars.SHOP,
                        SheetCars.NOW,
                        VisitNotes.NONE,
                        List.of(),
                        SheetRoom.TRIED.getFirst(),
                        reader)
                .write();
    }

    private static Assessment after(Assessment base, Measure work, double done) {
        var readings = List.of(new Reading("w-1", work, Corner.LF, null, null, done, "", null, null));
        return SheetCars.ofVisit(base, SheetCars.visit(base.visit(), readings, List.of("Brake pads replaced"), ""));
    }

    @ParameterizedTest
    @EnumSource(
            value = Measure.class,
            names = {"BRACKET_CLEANED", "PADS_REPLACED", "DISC_REPLACED", "BRAKE_HARDWARE_REPLACED"})
    void workOnTheBrakesAsksToBurnishThem(Measure work) {
        assertThat(page(after(SheetCars.finished(), work, 1))).contains(BURNISH);
        assertThat(page(after(SheetCars.finished(), work, 0))).doesNotContain(BURNISH);
    }

    @Test
    void nobodyIsAskedToBedInTheBrakesOfACarThatIsNotToBeDriven() {
        var worked = after(SheetCars.finished(), Measure.PADS_REPLACED, 1);
        assertThat(page(SheetCars.withFindings(worked, List.of(finding(Verdict.SPENT)))))
                .contains(BURNISH);
        assertThat(page(SheetCars.withFindings(worked, List.of(finding(Verdict.UNSAFE)))))
                .contains("Do not drive this car until")
                .doesNotContain(BURNISH);
    }

    /** A brake that drags is freed or repaired first; one that was freed today is bedded in. */
    @Test
    void nobodyIsAskedToBedInABrakeThatDoesNotLetGo() {
        var worked = after(SheetCars.finished(), Measure.PADS_REPLACED, 1);
        var drags = ofBrake(Subject.Part.BRAKE_RELEASE, Verdict.SPENT, Corner.LF);
        assertThat(page(SheetCars.withFindings(worked, List.of(drags.todo(Todo.Action.REPAIR)))))
                .doesNotContain(BURNISH);
        var stuck = finding(Verdict.RUNS_OUT);
        assertThat(page(SheetCars.withFindings(worked, List.of(stuck.todo(Todo.Action.SERVICE_BRAKE, Todo.When.NOW)))))
                .doesNotContain(BURNISH);
        assertThat(page(SheetCars.withFindings(
                        worked, List.of(stuck.todo(Todo.Action.SERVICE_BRAKE, Todo.When.AT_NEXT_VISIT)))))
                .contains(BURNISH);
    }

    @Test
    void theCaliperOfABrakeThatDoesNotLetGoIsNotAmongWhatHolds() {
        var findings = List.of(
                ofBrake(Subject.Part.BRAKE_RELEASE, Verdict.SPENT, Corner.LF).todo(Todo.Action.REPAIR),
                ofBrake(Subject.Part.CALIPER, Verdict.HOLDS, Corner.LF),
                ofBrake(Subject.Part.CALIPER, Verdict.HOLDS, Corner.RF));
        assertThat(page(SheetCars.withFindings(SheetCars.finished(), findings))).contains("<p>Brake calipers: RF.</p>");
    }

    @Test
    void wheelsThatAreNotTorquedAreNamedInOneSentence() {
        var base = SheetCars.finished();
        var readings =
                List.of(new Reading("w-1", Measure.PAD_THICKNESS, Corner.LF, null, Spot.INNER, 8, "", null, null));
        assertThat(page(SheetCars.ofVisit(base, SheetCars.visit(base.visit(), readings, List.of(), ""))))
                .containsOnlyOnce("torqued")
                .contains("The wheels at LF, RF, LR and RR are not torqued.");
    }

    /** 7.5 points: common practice for small print, no source. */
    @Test
    void theSmallestLettersOfTheCarsPictureCanBeRead() {
        var page = page(SheetCars.finished());
        double widthMm =
                found(page, "\\.car svg \\{ width: (\\d+)mm").findFirst().orElseThrow();
        var picture = page.substring(page.indexOf("<div class=\"car\">"));
        var svg = picture.substring(0, picture.indexOf("</svg>"));
        double mmPerUnit =
                widthMm / found(svg, "viewBox=\"0 0 (\\d+)").findFirst().orElseThrow();
        assertThat(found(svg, "font-size=\"(\\d+)").map(size -> size * mmPerUnit * 72 / 25.4))
                .isNotEmpty()
                .allMatch(points -> points >= 7.5);
    }

    private static Stream<Double> found(String text, String pattern) {
        return Pattern.compile(pattern).matcher(text).results().map(found -> Double.valueOf(found.group(1)));
    }

    /** A tablet takes 1000 characters of it. */
    @Test
    void whatAPersonWroteStandsWhole() {
        var words = "It grinds in the morning. ".repeat(37) + "And it whistles.";
        var remarks =
                List.of(new Remark("r1", Remark.Topic.COMPLAINT, words, "Ada", Instant.parse("2026-11-25T09:41:00Z")));
        var notes =
                new VisitNotes(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), remarks, List.of());
        var base = SheetCars.finished();
        var page = new SheetPage(
                        SheetCars.ofVisit(base, SheetCars.visit(base.visit(), List.of(), List.of(), words)),
                        SheetCars.SHOP,
                        SheetCars.NOW,
                        notes,
                        List.of(),
                        SheetRoom.TRIED.getFirst(),
                        Reader.DEFAULT)
                .write();
        assertThat(page.split("And it whistles\\.", -1)).hasSize(3);
    }

    @Test
    void whatIsUnsafeIsToldWholeHoweverLittleRoomThereIs() {
        var words = "The car must not be driven. " + "Its brake is broken. ".repeat(20) + "Number ";
        var findings = IntStream.range(0, 20)
                .mapToObj(number -> new Finding(
                        new Subject(Subject.Part.PAD, null, null, "set-" + number),
                        number < 15 ? Verdict.UNSAFE : Verdict.SPENT,
                        Said.verbatim("title"),
                        Said.verbatim(words + number + "."),
                        null,
                        null,
                        0.1,
                        List.of(),
                        Said.verbatim("house rule")))
                .toList();
        var page = new SheetPage(
                        SheetCars.withFindings(SheetCars.finished(), findings),
                        SheetCars.SHOP,
                        SheetCars.NOW,
                        VisitNotes.NONE,
                        List.of(),
                        SheetRoom.TRIED.getLast().withLessRecord().getLast(),
                        Reader.DEFAULT)
                .write();
        assertThat(IntStream.range(0, 15)).allSatisfy(number -> assertThat(page).contains("Number " + number + "."));
        assertThat(page).contains("5 more things, less urgent, stand on page 2.");
        assertThat(page.indexOf("Number 15.")).isGreaterThan(page.indexOf("For the record"));
    }

    @Test
    void whatWasSeenDamagedIsOnTheRecordHoweverLittleRoomThereIs() {
        var base = SheetCars.finished();
        var readings = List.of(
                new Reading("w-1", Measure.DISC_CRACKS, Corner.LF, null, null, 2, "", null, null),
                new Reading("w-2", Measure.DISC_PITTING, Corner.RF, null, Spot.INNER, 0, "", null, null));
        var page = new SheetPage(
                        SheetCars.ofVisit(base, SheetCars.visit(base.visit(), readings, List.of(), "")),
                        SheetCars.SHOP,
                        SheetCars.NOW,
                        VisitNotes.NONE,
                        List.of(),
                        SheetRoom.TRIED.getLast().withLessRecord().getLast(),
                        Reader.DEFAULT)
                .write();
        assertThat(page).contains("Disc cracks: marked (LF)").doesNotContain("pitting: none");
    }

    @Test
    void theWordsOfTheWorkAreNotLookedInto() {
        var base = SheetCars.finished();
        assertThat(page(SheetCars.ofVisit(
                        base, SheetCars.visit(base.visit(), List.of(), List.of("Brake pads looked at"), ""))))
                .doesNotContain(BURNISH);
    }

    @Test
    void aCarThatRegeneratesIsToldToDoItTheMakersWay() {
        for (var car : SheetCars.lastVisits()) {
            var worked = after(car, Measure.PADS_REPLACED, 1);
            assertThat(page(worked).contains("the maker's own way"))
                    .isEqualTo(car.history().vehicle().electric());
        }
    }

    @Test
    void pressuresAreSaidToBeSetOnlyWhenTheyWereRead() {
        var base = SheetCars.finished();
        var readings = base.visit().readings().stream()
                .filter(reading -> reading.measure() != Measure.PRESSURE_SET)
                .toList();
        assertThat(page(base)).contains("Tyre pressures are set");
        assertThat(page(SheetCars.ofVisit(base, SheetCars.visit(base.visit(), readings, List.of(), ""))))
                .doesNotContain("Tyre pressures are set")
                .contains("Check the tyre pressures");
    }

    @Test
    void whatRunsOutWithoutADateIsToBeDoneBeforeTheNextVisit() {
        assertThat(page(SheetCars.withFindings(
                        SheetCars.finished(), List.of(finding(Verdict.RUNS_OUT).todo(Todo.Action.INSPECT)))))
                .contains("<td>Look at it closely<br/>before the next visit</td>")
                .doesNotContain("now</td>");
        assertThat(page(SheetCars.withFindings(
                        SheetCars.finished(), List.of(finding(Verdict.SPENT).todo(Todo.Action.REPLACE)))))
                .contains("<td>Replace<br/>now</td>");
    }

    /** A wheel of the stored set, which is no longer at this corner. */
    @Test
    void aFindingOnAStoredWheelIsNamedAfterItsSetAndLeavesTheCornerAsItIs() {
        var base = SheetCars.finished();
        var stored = base.forecasts().stream()
                .filter(forecast -> forecast.role() == SetSpan.Role.COMING_OFF)
                .findFirst()
                .orElseThrow()
                .set();
        var finding = new Finding(
                new Subject(
                        Subject.Part.TREAD_PATTERN,
                        Corner.LF,
                        stored.wheels().getFirst().tag(),
                        stored.id()),
                Verdict.SPENT,
                Said.verbatim("title"),
                Said.verbatim("Worn unevenly."),
                null,
                null,
                0,
                List.of(),
                Said.verbatim("house rule"));
        assertThat(page(SheetCars.withFindings(base, List.of(finding))))
                .contains("Summer set, LF: Worn unevenly.")
                .containsPattern(Pattern.compile("Car from above[^\"]*LF tread \\d\\.\\d\u00a0mm"))
                .doesNotContainPattern(Pattern.compile("Car from above[^\"]*LF tread \\d\\.\\d\u00a0mm \\p{Lu}\\w+: "));
    }

    @Test
    void aPadThatIsThickButStuckIsNotAmongWhatHolds() {
        var findings = List.of(
                finding(Verdict.RUNS_OUT, Corner.LF),
                finding(Verdict.HOLDS, Corner.LF),
                finding(Verdict.HOLDS, Corner.RF));
        assertThat(page(SheetCars.withFindings(SheetCars.finished(), findings))).contains("<p>Brake pads: RF.</p>");
    }

    @Test
    void theSheetSpeaksTheLanguageOfWhoTakesItHome() {
        var french = page(SheetCars.finished(), Reader.DEFAULT.in(Language.FRENCH));
        assertThat(french)
                .contains(
                        "lang=\"fr\"",
                        "Données inventées",
                        "Ce qui doit être fait, et d’ici quand",
                        "AVG avant gauche",
                        "À retenir")
                .contains("Véhicule vu du dessus", "Page \" counter(page) \" de ")
                .doesNotContain("Next visit", "What was", "Left front", "Car from above", "\u202f");
    }

    @Test
    void onlyAnInventedShopIsSaidToBeSo() {
        var real = new SheetPage(
                        SheetCars.finished(),
                        Letterhead.of("Garage of invented things"),
                        SheetCars.NOW,
                        VisitNotes.NONE,
                        List.of(),
                        SheetRoom.TRIED.getFirst(),
                        Reader.DEFAULT)
                .write();
        assertThat(real).contains("Garage of invented things").doesNotContain("Invented data");
    }

    /** A corner stands in front of a sentence unless it is among the sentence's facts. */
    @Test
    void aCornerThatTheSentenceNamesIsNotSaidTwice() {
        assertThat(NamedCorner.isNamed(Corner.LF, Listed.and(List.of(Corner.RF, new CornerName(Corner.LF)))))
                .isTrue();
        assertThat(NamedCorner.isNamed(Corner.LR, Listed.and(List.of(Corner.RF, new CornerName(Corner.LF)))))
                .isFalse();
        assertThat(NamedCorner.isNamed(Corner.LF, Said.verbatim("LF"))).isFalse();
    }

    private static Finding finding(Verdict verdict) {
        return finding(verdict, Corner.LF);
    }

    private static Finding finding(Verdict verdict, Corner corner) {
        return ofBrake(Subject.Part.PAD, verdict, corner);
    }

    private static Finding ofBrake(Subject.Part part, Verdict verdict, Corner corner) {
        return new Finding(
                new Subject(part, corner, null, null),
                verdict,
                Said.verbatim("title"),
                Said.verbatim("The pads at LF are thin."),
                null,
                null,
                0.1,
                List.of(),
                Said.verbatim("house rule"));
    }

    /** What was agreed, by whom and how, and what costs nothing, stands among what was done. */
    @Test
    void whatWasAgreedAndWhatWasFreeStandsOnTheSheet() {
        var moment = Instant.parse("2026-11-25T14:05:00Z");
        var agreed = List.<Said>of(
                new WorkTold.Agreed(
                        Said.verbatim("Front pads"),
                        new Price(Money.parse("CAD 203.40")),
                        "Ottilie",
                        Agreement.Way.TELEPHONE,
                        "555 0100",
                        moment),
                new WorkTold.Free(ChargedWork.find("BRAKE_HOSE.LF").orElseThrow(), FreeReason.SAFETY, "Ada", moment));
        var page = new SheetPage(
                SheetCars.finished(),
                SheetCars.SHOP,
                SheetCars.NOW,
                VisitNotes.NONE,
                agreed,
                SheetRoom.TRIED.getFirst(),
                Reader.DEFAULT);
        assertThat(page.agreed().first())
                .satisfiesExactly(
                        line -> assertThat(line)
                                .contains("Ottilie agreed by telephone (555 0100)", "Front pads; $203.40 with taxes"),
                        line -> assertThat(line)
                                .contains("Done without charge: brake hose, left front", "for safety", "Ada"));
        assertThat(page.write()).contains("What was agreed");
        assertThat(page(SheetCars.finished())).doesNotContain("What was agreed");
    }
}
