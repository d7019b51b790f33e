package cornerbook.core.order.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.assess.Assessor;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Tyre;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.SetSpan;
import cornerbook.core.order.Need;
import cornerbook.core.order.OrderPart;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a car needs, as whoever orders for it would say. All cars are invented. */
class CarNeedsTest {
    private static final Assessor ASSESSOR = new Assessor(Cars.LIMITS);

    private static CarHistory driven(DriveLayout drive, CarHistory history) {
        var car = history.vehicle();
        return new CarHistory(
                new Vehicle(
                        car.id(),
                        car.name(),
                        car.plate(),
                        car.vin(),
                        drive,
                        car.drivesElectric(),
                        car.jurisdiction(),
                        car.front(),
                        car.rear(),
                        car.fastener(),
                        car.battery(),
                        car.brakeFluid(),
                        car.details()),
                history.customer(),
                history.sets(),
                history.visits());
    }

    private static List<CarNeed> needs(CarHistory history) {
        return ASSESSOR.outcome(history, history.visits().getLast().id()).needs();
    }

    private static Optional<Need> tyres(List<CarNeed> needs, SeasonKind season, String size) {
        return needs.stream()
                .filter(need -> need.article().part() == OrderPart.TYRE)
                .filter(need -> season.name().equals(need.article().kind()))
                .filter(need -> need.article().text().equals(size))
                .map(CarNeed::need)
                .findFirst();
    }

    private static Optional<Need> part(List<CarNeed> needs, OrderPart part, Axle axle) {
        return needs.stream()
                .filter(need -> need.article().part() == part)
                .filter(need -> axle.name().equals(need.article().kind()))
                .map(CarNeed::need)
                .findFirst();
    }

    /** Whatever is worn, the tyres are not needed with just the chance that the finding tells of the set. */
    @ParameterizedTest
    @ValueSource(doubles = {3.2, 3.6, 4.2, 5.0, 6.5})
    void aStoredSetIsNeededWithTheRestOfItsChance(double summerMm) {
        for (var drive : DriveLayout.values()) {
            var history = driven(drive, Cars.changeOver(summerMm, 7, List.of()));
            var assessment = ASSESSOR.assess(history, "v2");
            var stored = assessment.forecasts().stream()
                    .filter(forecast -> forecast.role() == SetSpan.Role.COMING_OFF)
                    .findFirst()
                    .orElseThrow();
            var need = tyres(needs(history), SeasonKind.SUMMER, "225/55R18");
            double any = need.map(Need::any).orElse(0.0);
            assertThat(any).as("%s %s", drive, summerMm).isCloseTo(1 - stored.probabilityHolds(), within(1e-9));
            assertThat(need.map(Need::pieces).orElse(drive == DriveLayout.ALL ? 4 : 2))
                    .isEqualTo(drive == DriveLayout.ALL ? 4 : 2);
        }
    }

    @Test
    void whatIsBelowTheMinimumIsNeededForCertain() {
        assertThat(tyres(
                        needs(driven(DriveLayout.ALL, Cars.changeOver(2.4, 7, List.of()))),
                        SeasonKind.SUMMER,
                        "225/55R18"))
                .contains(new Need(4, 1, 0));
        assertThat(tyres(
                        needs(driven(DriveLayout.FRONT, Cars.changeOver(2.4, 7, List.of()))),
                        SeasonKind.SUMMER,
                        "225/55R18"))
                .contains(new Need(2, 0, 1));
    }

    /** The rear tyres are as good as new: only a pair is needed, or the whole set where all wheels are driven. */
    @ParameterizedTest
    @CsvSource({"FRONT, 2", "REAR, 2", "ALL, 4"})
    void oneWornAxleNeedsAPair(DriveLayout drive, int pieces) {
        var deep = Cars.changeOver(7.5, 7, List.of());
        var autumn = deep.visits().getLast();
        var readings = autumn.readings().stream()
                .map(each -> each.corner() == Corner.LF
                                && each.wheelTag() != null
                                && each.wheelTag().startsWith("S-")
                        ? worn(each)
                        : each)
                .toList();
        var history = driven(
                drive,
                Cars.history(
                        deep.visits().getFirst(),
                        new Visit(
                                "v2",
                                autumn.date(),
                                autumn.odometerKm(),
                                autumn.arrivedOn(),
                                autumn.leftOn(),
                                readings)));
        var need = tyres(needs(history), SeasonKind.SUMMER, "225/55R18").orElseThrow();
        assertThat(need.pieces()).isEqualTo(pieces);
        assertThat(need.once()).isGreaterThan(0.98);
        assertThat(need.twice()).isLessThan(0.02);
    }

    private static Reading worn(Reading reading) {
        return Cars.reading(reading.measure(), reading.corner(), reading.wheelTag(), reading.spot(), 2.0);
    }

    @Test
    void twoSizesAreTwoArticles() {
        var history = Cars.changeOver(2.4, 7, List.of());
        var wheels = new ArrayList<Wheel>();
        for (var corner : Corner.values()) {
            wheels.add(new Wheel(
                    "S-" + corner,
                    Tyre.ofSize(corner.axle() == Axle.FRONT ? "235/45R19 95Y" : "265/40 R19 102Y XL"),
                    null));
        }
        var staggered = driven(
                DriveLayout.REAR,
                new CarHistory(
                        history.vehicle(),
                        history.customer(),
                        List.of(
                                new WheelSet("SUMMER-set", SeasonKind.SUMMER, null, wheels),
                                history.sets().getLast()),
                        history.visits()));
        var needs = needs(staggered);
        assertThat(tyres(needs, SeasonKind.SUMMER, "235/45R19")).contains(Need.of(2, 1));
        assertThat(tyres(needs, SeasonKind.SUMMER, "265/40R19")).contains(Need.of(2, 1));
    }

    @Test
    void padsBelowTheirMinimumAreNeededByTheAxle() {
        var needs = needs(
                Cars.changeOver(7, 7, List.of(Cars.reading(Measure.PAD_THICKNESS, Corner.LF, null, Spot.OUTER, 1.0))));
        assertThat(part(needs, OrderPart.PADS, Axle.FRONT)).contains(Need.of(1, 1));
        assertThat(part(needs, OrderPart.PADS, Axle.REAR)).isEmpty();
        assertThat(needs.stream()
                        .filter(need -> need.article().part() == OrderPart.PADS)
                        .map(need -> need.article().text()))
                .containsExactly("Invented hatchback");
    }

    @Test
    void newDiscsTakeNewPads() {
        var needs =
                needs(Cars.changeOver(7, 7, List.of(Cars.reading(Measure.DISC_THICKNESS, Corner.RR, null, null, 5.0))));
        assertThat(part(needs, OrderPart.DISCS, Axle.REAR)).contains(Need.of(1, 1));
        assertThat(part(needs, OrderPart.PADS, Axle.REAR)).contains(Need.of(1, 1));
    }

    @Test
    void fluidThatBoilsTooEarlyIsOneChange() {
        var needs = needs(
                Cars.changeOver(7, 7, List.of(Cars.reading(Measure.BRAKE_FLUID_BOILING_POINT, null, null, null, 140))));
        assertThat(needs)
                .filteredOn(need -> need.article().part() == OrderPart.BRAKE_FLUID)
                .singleElement()
                .satisfies(need -> {
                    assertThat(need.article().text()).isEqualTo("DOT 4");
                    assertThat(need.need()).isEqualTo(Need.of(1, 1));
                    assertThat(need.due()).isEqualTo(LocalDate.of(2027, 4, 15));
                });
    }

    @Test
    void nothingWornNeedsNothing() {
        assertThat(needs(Cars.changeOver(8, 8, List.of())))
                .allSatisfy(need -> assertThat(need.need().any()).isLessThan(0.05));
    }
}
