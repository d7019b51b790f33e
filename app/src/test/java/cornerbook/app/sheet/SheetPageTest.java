package cornerbook.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.record.VisitNotes;
import cornerbook.app.demo.DemoShop;
import cornerbook.core.assess.Assessment;
import cornerbook.core.car.Measure;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.tread.judge.SetForecast;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class SheetPageTest {
    private static final String BURNISH = "slow moderately from 65 to 15 km/h";

    private static String page(Assessment assessment) {
        return new SheetPage(assessment, SheetRoom.TRIED.getFirst(), VisitNotes.NONE)
                .write(DemoShop.NAME, SheetCars.NOW);
    }

    private static Assessment afterWork(String work) {
        var base = SheetCars.finished();
        return SheetCars.ofVisit(
                base, SheetCars.visit(base.visit(), base.visit().readings(), List.of(work), ""));
    }

    @Test
    void workOnTheBrakesAsksToBurnishThem() {
        assertThat(page(afterWork("Front pads and discs replaced"))).contains(BURNISH);
        assertThat(page(afterWork("Winter set fitted"))).doesNotContain(BURNISH);
    }

    @Test
    void aCarThatRegeneratesIsToldToDoItTheMakersWay() {
        for (var car : SheetCars.lastVisits()) {
            var worked =
                    SheetCars.ofVisit(car, SheetCars.visit(car.visit(), List.of(), List.of("Brake pads replaced"), ""));
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
    void whatRunsOutWithoutADateIsNotSaidToDoSoNow() {
        assertThat(page(SheetCars.withFindings(SheetCars.finished(), List.of(finding(Verdict.RUNS_OUT)))))
                .contains("<td>to be looked at sooner</td>")
                .doesNotContain("<td>now</td>");
        assertThat(page(SheetCars.withFindings(SheetCars.finished(), List.of(finding(Verdict.SPENT)))))
                .contains("<td>now</td>");
    }

    /** A wheel of the stored set, which is no longer at this corner. */
    @Test
    void aFindingOnAStoredWheelIsNamedAfterItsSetAndLeavesTheCornerAsItIs() {
        var base = SheetCars.finished();
        var stored = base.forecasts().stream()
                .filter(forecast -> forecast.role() == SetForecast.Role.COMING_OFF)
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
                "title",
                "Worn unevenly.",
                null,
                null,
                0,
                List.of(),
                "house rule");
        assertThat(page(SheetCars.withFindings(base, List.of(finding))))
                .contains("Summer set, LF: Worn unevenly.")
                .containsPattern(Pattern.compile("Car from above[^\"]*LF \\d\\.\\d mm Holds"));
    }

    @Test
    void aPadThatIsThickButStuckIsNotAmongWhatHolds() {
        var findings = List.of(
                finding(Verdict.RUNS_OUT, Corner.LF),
                finding(Verdict.HOLDS, Corner.LF),
                finding(Verdict.HOLDS, Corner.RF));
        assertThat(page(SheetCars.withFindings(SheetCars.finished(), findings))).contains("<li>Brake pads: RF.</li>");
    }

    private static Finding finding(Verdict verdict) {
        return finding(verdict, Corner.LF);
    }

    private static Finding finding(Verdict verdict, Corner corner) {
        return new Finding(
                new Subject(Subject.Part.PAD, corner, null, null),
                verdict,
                "title",
                "The pads at LF are thin.",
                null,
                null,
                0.1,
                List.of(),
                "house rule");
    }
}
