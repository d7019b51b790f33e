package cornerbook.core.finding;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Cars;
import cornerbook.core.car.JobCard;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.SetOf;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What judging a visit rests on. Cars and readings are invented. */
class CaseTest {
    private static final LimitTable LIMITS = new LimitTable(Cars.LIMITS);

    @Test
    void theSetsAreThoseThatGoOnAndComeOff() {
        var given = of(Cars.changeOver(7, 7.5, List.of()), "v2");
        assertThat(given.goingOn()).map(WheelSet::season).contains(SeasonKind.WINTER);
        assertThat(given.comingOff()).map(WheelSet::season).contains(SeasonKind.SUMMER);
        assertThat(given.nextVisit()).isEqualTo(LocalDate.of(2027, 4, 15));
        assertThat(given.visits()).extracting(Visit::id).containsExactly("v1", "v2");
    }

    /** Seen before: a day agreed a year too early left the law on studs, and what wears, unsaid. */
    @Test
    void aDayAgreedThatIsNotAheadIsNone() {
        var history = Cars.changeOver(7, 7.5, List.of());
        var date = history.getVisit("v2").date();
        assertThat(Cases.of(history).until(date.plusDays(1)).last().nextVisit()).isEqualTo(date.plusDays(1));
        for (var agreed : List.of(date, date.minusYears(1))) {
            assertThat(Cases.of(history).until(agreed).last().nextVisit()).isEqualTo(LocalDate.of(2027, 4, 15));
        }
    }

    @Test
    void aCarThatStaysOnItsWheelsTakesNoSetOff() {
        var given = of(Cars.at("S-"), Cars.at("S-"));
        assertThat(given.goingOn()).map(WheelSet::season).contains(SeasonKind.SUMMER);
        assertThat(given.comingOff()).isEmpty();
        assertThat(given.workDone()).isEmpty();
    }

    /** Most of the wheels tell the set, of as many the first in the order of the corners, in whatever order a file names them. */
    @Test
    void theOrderInWhichWheelsAreNamedDoesNotMatter() {
        var mixed = Cars.at("S-");
        mixed.put(Corner.RR, "W-RR");
        var named = new LinkedHashMap<Corner, String>();
        List.of(Corner.RR, Corner.LR, Corner.RF, Corner.LF).forEach(corner -> named.put(corner, mixed.get(corner)));
        assertThat(of(named, Map.of()).visit().arrivedOn()).containsExactlyEntriesOf(mixed);
        assertThat(Cars.history().findSetOn(named)).map(WheelSet::season).contains(SeasonKind.SUMMER);
        mixed.put(Corner.RF, "W-RF");
        assertThat(Cars.history().findSetOn(mixed)).map(WheelSet::season).contains(SeasonKind.SUMMER);
        mixed.put(Corner.LF, "W-LF");
        assertThat(Cars.history().findSetOn(mixed)).map(WheelSet::season).contains(SeasonKind.WINTER);
    }

    /** It is the wheels on the car that are judged, and a wheel that is not on it is not. */
    @Test
    void theSetThatGoesOnHasTheWheelsThatAreOnTheCar() {
        var mixed = Cars.at("S-");
        mixed.put(Corner.RR, "W-RR");
        var given = of(Cars.at("S-"), mixed);
        assertThat(given.goingOn().orElseThrow().wheels())
                .extracting(Wheel::tag)
                .containsExactly("S-LF", "S-RF", "S-LR", "W-RR");
        assertThat(given.goingOn()).map(WheelSet::id).contains("SUMMER-set");
        assertThat(given.comingOff()).as("the same set, less one wheel").isEmpty();
        assertThat(given.standing(given.goingOn().orElseThrow())).contains(mixed);
    }

    @Test
    void wheelsThatStandElsewhereWereChangedOrRotated() {
        assertThat(of(Cars.at("S-"), Cars.at("W-")).workDone())
                .containsExactly(new Work.WheelsChanged(new SetOf(SeasonKind.SUMMER), new SetOf(SeasonKind.WINTER)));
        assertThat(of(Map.of(), Cars.at("W-")).workDone())
                .containsExactly(new Work.WheelsFitted(new SetOf(SeasonKind.WINTER)));
        var crossed = Cars.at("S-");
        crossed.put(Corner.LF, "S-RR");
        crossed.put(Corner.RR, "S-LF");
        assertThat(of(Cars.at("S-"), crossed).workDone()).containsExactly(new Work.WheelsRotated());
        var exchanged = Cars.at("S-");
        exchanged.put(Corner.RF, "W-RF");
        assertThat(of(Cars.at("S-"), exchanged).workDone()).containsExactly(new Work.WheelsExchanged(at(Corner.RF)));
        assertThat(of(Cars.at("S-"), Map.of()).workDone()).isEmpty();
    }

    @Test
    void whatWasDoneAtTheBrakesIsToldCornerByCorner() {
        assertThat(worked(
                        reading(Measure.PADS_REPLACED, Corner.RF, 1),
                        reading(Measure.PADS_REPLACED, Corner.LF, 1),
                        reading(Measure.PADS_REPLACED, Corner.LR, 0),
                        reading(Measure.DISC_REPLACED, Corner.LF, 1),
                        reading(Measure.BRAKE_HARDWARE_REPLACED, Corner.RR, 1),
                        reading(Measure.DISC_MOVED_BY, Corner.RR, 2),
                        reading(Measure.BRAKE_FLUID_REPLACED, null, 1)))
                .containsExactly(
                        new Work.PadsReplaced(at(Corner.LF, Corner.RF)),
                        new Work.DiscsReplaced(at(Corner.LF)),
                        new Work.HardwareReplaced(at(Corner.RR)),
                        new Work.DiscsMovedOn(at(Corner.RR)),
                        new Work.FluidReplaced());
    }

    /** The wheel is named by its tag: it may have come off at this visit, and be on no corner of the car that leaves. */
    @Test
    void aPunctureThatWasRepairedIsWorkDone() {
        assertThat(worked(
                        Cars.reading(Measure.PUNCTURE_REPAIRED, Corner.RR, "W-RR", null, 1),
                        Cars.reading(Measure.PUNCTURE_REPAIRED, Corner.LF, "W-LF", null, 0)))
                .containsExactly(new Work.PuncturesRepaired(Listed.and(List.of(Said.verbatim("W-RR")))));
    }

    /** A contact face that got no lubricant was not lubricated; pads that move after service had their guides seen to. */
    @Test
    void cleaningAndLubricatingAreToldApart() {
        assertThat(worked(
                        reading(Measure.BRACKET_CLEANED, Corner.LF, 1),
                        reading(Measure.PIN_LUBRICANT, Corner.LF, 1),
                        reading(Measure.BRACKET_CLEANED, Corner.RF, 1),
                        reading(Measure.PIN_LUBRICANT, Corner.RF, 0),
                        reading(Measure.ABUTMENT_LUBRICANT, Corner.LR, 2),
                        reading(Measure.PAD_MOVEMENT_AFTER_SERVICE, Corner.RR, 0)))
                .containsExactly(
                        new Work.CleanedAndLubricated(at(Corner.LF, Corner.RR)),
                        new Work.Cleaned(at(Corner.RF)),
                        new Work.Lubricated(at(Corner.LR)));
    }

    /** A wheel whose torque was read is not told again for its tick. */
    @Test
    void pressuresAndTighteningAreToldWithTheirValues() {
        var visit = visit(
                        Cars.at("S-"),
                        Cars.at("S-"),
                        List.of(
                                Cars.reading(Measure.PRESSURE_SET, Corner.RF, "S-RF", null, 250),
                                Cars.reading(Measure.PRESSURE_SET, Corner.LF, "S-LF", null, 240),
                                Cars.reading(Measure.WHEEL_TORQUE, Corner.LF, "S-LF", null, 130)),
                        List.of())
                .withTightened(Set.of(Corner.LF, Corner.RR, Corner.LR));
        assertThat(of(Cars.history(visit), "v").workDone())
                .containsExactly(
                        new Work.PressuresSet(Listed.commas(List.of(
                                new Work.PressureAt(Corner.LF, Amount.of(240, "kPa")),
                                new Work.PressureAt(Corner.RF, Amount.of(250, "kPa"))))),
                        new Work.WheelsTorqued(
                                Listed.commas(List.of(new Work.TorqueAt(Corner.LF, Amount.of(130, "N·m"))))),
                        new Work.WheelsTightened(at(Corner.LR, Corner.RR)));
    }

    @Test
    void aCorrectionTakesBackWhatWasNotDone() {
        var mistake = reading(Measure.PADS_REPLACED, Corner.LF, 1);
        var right = new Reading(
                "right", Measure.PADS_REPLACED, Corner.LF, null, null, 0, "not done", mistake.id(), "wrong corner");
        assertThat(worked(mistake, right)).isEmpty();
    }

    @Test
    void whatAFileSaysInItsOwnWordsStandsBehind() {
        var visit = visit(
                Cars.at("S-"), Cars.at("S-"), List.of(reading(Measure.PADS_REPLACED, Corner.LF, 1)), List.of("Wipers"));
        assertThat(of(Cars.history(visit), "v").workDone())
                .containsExactly(new Work.PadsReplaced(at(Corner.LF)), Said.verbatim("Wipers"));
    }

    private static List<Said> worked(Reading... readings) {
        return of(Cars.history(visit(Cars.at("S-"), Cars.at("S-"), List.of(readings), List.of())), "v")
                .workDone();
    }

    private static Reading reading(Measure measure, @Nullable Corner corner, double value) {
        return Cars.reading(measure, corner, null, null, value);
    }

    private static Listed at(Corner... corners) {
        return Listed.and(List.of(corners));
    }

    private static Case of(Map<Corner, String> arrivedOn, Map<Corner, String> leftOn) {
        return of(Cars.history(visit(arrivedOn, leftOn, List.of(), List.of())), "v");
    }

    private static Case of(CarHistory history, String visitId) {
        return new Case(history, visitId, LIMITS, Knowledge.NONE, null);
    }

    private static Visit visit(
            Map<Corner, String> arrivedOn, Map<Corner, String> leftOn, List<Reading> readings, List<String> workDone) {
        return new Visit(
                "v",
                Cars.AUTUMN,
                48_000,
                arrivedOn,
                leftOn,
                readings,
                new JobCard(null, workDone, null, null, List.of()),
                Set.of());
    }
}
