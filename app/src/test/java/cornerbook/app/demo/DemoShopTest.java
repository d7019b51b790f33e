package cornerbook.app.demo;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.assess.VisitRules;
import cornerbook.core.battery.Chemistry;
import cornerbook.core.brake.fluid.BrakeFluid;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.Spot;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DemoShopTest {
    private static final LocalDate AUTUMN_DAY = LocalDate.of(2026, 11, 25);

    private final List<CarHistory> shop = DemoShop.histories(AUTUMN_DAY);

    @Test
    void sameDayGivesTheSameShop() {
        assertThat(DemoShop.histories(AUTUMN_DAY)).isEqualTo(shop);
        assertThat(DemoShop.NAME).contains("(invented)");
    }

    /** One of this car's pads is down to its back: the gauge shows nothing there, and cannot show less. */
    @Test
    void aPadWornToItsBackIsReadAsNothing() {
        int place = 27_871;
        assertThat(DemoShop.histories(AUTUMN_DAY, place, place + 1))
                .singleElement()
                .satisfies(car -> assertThat(car.visits())
                        .flatExtracting(Visit::readings)
                        .filteredOn(reading -> reading.measure() == Measure.PAD_THICKNESS)
                        .extracting(Reading::value)
                        .contains(0.0)
                        .allMatch(mm -> mm >= 0));
    }

    @Test
    void twelveCarsOverSixSeasons() {
        assertThat(shop).hasSize(12).allSatisfy(car -> assertThat(car.visits()).hasSizeBetween(6, 7));
        assertThat(shop).extracting(car -> car.vehicle().id()).doesNotHaveDuplicates();
        assertThat(shop).extracting(car -> car.vehicle().plate()).doesNotHaveDuplicates();
        assertThat(shop)
                .flatExtracting(CarHistory::sets)
                .flatExtracting(set -> set.wheels().stream().map(Wheel::tag).toList())
                .doesNotHaveDuplicates();
    }

    @Test
    void castShowsWhatTheTradeMeets() {
        assertThat(shop).extracting(car -> car.vehicle().drive()).contains(DriveLayout.values());
        assertThat(shop)
                .anyMatch(car -> car.vehicle().staggered() && car.vehicle().drive() == DriveLayout.REAR);
        assertThat(shop).anyMatch(car -> !car.vehicle().electric());
        assertThat(shop)
                .anyMatch(car -> car.sets().size() == 1 && car.sets().getFirst().season() == SeasonKind.ALL_SEASON);
        assertThat(wheels()).anyMatch(wheel -> wheel.tyre().directional());
        assertThat(readings(Measure.PAD_MOVEMENT)).anyMatch(reading -> reading.value() == 2);
        assertThat(readings(Measure.PAD_THICKNESS)).anyMatch(reading -> reading.value() < 3.5);
        assertThat(readings(Measure.BRAKE_FLUID_BOILING_POINT))
                .anyMatch(reading -> BrakeFluid.DOT_4.boilsTooEarly(reading.value()));
        assertThat(shop)
                .anyMatch(car -> Objects.requireNonNull(car.vehicle().battery()).chemistry() == Chemistry.LITHIUM);
    }

    @Test
    void drumsWereReadOverSeasons() {
        assertThat(shop)
                .filteredOn(car -> car.vehicle().rear().brake().hasDrum())
                .singleElement()
                .satisfies(car -> assertThat(car.visits())
                        .filteredOn(visit -> visit.readings().stream()
                                .anyMatch(reading ->
                                        reading.measure() == Measure.LINING_THICKNESS && reading.value() > 3))
                        .hasSizeGreaterThanOrEqualTo(2));
    }

    @Test
    void seizedPadIsThinnerThanItsMate() {
        Visit visit = shop.get(1).visits().getLast();
        double outer = value(visit, Measure.PAD_THICKNESS, Corner.RR, Spot.OUTER);
        double inner = value(visit, Measure.PAD_THICKNESS, Corner.RR, Spot.INNER);
        assertThat(value(visit, Measure.PAD_MOVEMENT, Corner.RR, Spot.OUTER)).isEqualTo(2);
        assertThat(inner - outer).isGreaterThan(1);
    }

    @Test
    void someVisitsOfTodayAreNotFinished() {
        assertThat(shop.stream()
                        .flatMap(car -> car.visits().stream())
                        .filter(visit -> visit.date().equals(AUTUMN_DAY)))
                .hasSize(3)
                .allSatisfy(visit -> {
                    assertThat(visit.leftOn()).isEmpty();
                    assertThat(visit.readings()).isNotEmpty();
                });
    }

    @Test
    void everyWheelSaysWhatItIs() {
        assertThat(wheels()).allSatisfy(wheel -> {
            assertThat(wheel.sensorId()).matches("[0-9A-F]{8}");
            // 49 CFR 574.5: thirteen symbols, without G, I, O, Q, S and Z; the last four are week and year
            assertThat(wheel.tyre().tin()).matches("[0-9A-FHJ-NPRT-Y]{9}(0[1-9]|[1-4][0-9]|5[0-3])[0-9]{2}");
        });
    }

    @Test
    void readingIdsAreUniqueOverTheShop() {
        Set<String> ids = new HashSet<>();
        assertThat(readings()).allMatch(reading -> ids.add(reading.id()));
    }

    /** Each is made by its number alone, so a book that was stopped half filled goes on where it was. */
    @Test
    void carsBehindTheCastAreTheSameWhereverOneBegins() {
        var all = DemoShop.histories(AUTUMN_DAY, 0, 300).toList();
        assertThat(all.subList(0, 12)).isEqualTo(shop);
        assertThat(DemoShop.histories(AUTUMN_DAY, 250, 300)).containsExactlyElementsOf(all.subList(250, 300));
        assertThat(all)
                .allSatisfy(car -> assertThat(VisitRules.check(car, AUTUMN_DAY)).isEmpty());
        assertThat(all)
                .extracting(car -> car.vehicle().id())
                .doesNotHaveDuplicates()
                .allMatch(id -> id.startsWith(DemoShop.CAR_ID_BEGINS));
        assertThat(all).extracting(car -> car.vehicle().plate()).doesNotHaveDuplicates();
        assertThat(all)
                .flatExtracting(CarHistory::sets)
                .flatExtracting(WheelSet::wheels)
                .extracting(Wheel::sensorId)
                .doesNotHaveDuplicates();
    }

    /** A shop has bays for a part of its cars each day: they come over the weeks of a season, and some are still to come. */
    @ParameterizedTest
    @ValueSource(strings = {"2026-11-25", "2026-01-03", "2026-02-02", "2027-04-30", "2026-07-31", "2026-08-01"})
    void theCrowdDoesNotComeAllAtOnce(LocalDate today) {
        int cars = 600;
        var crowd = DemoShop.histories(today, 12, 12 + cars).toList();
        var ofADay = crowd.stream()
                .flatMap(car -> car.visits().stream())
                .collect(Collectors.groupingBy(Visit::date, Collectors.counting()));
        assertThat(ofADay.values()).allMatch(visits -> visits <= 0.06 * cars);
        assertThat(ofADay.keySet()).allMatch(day -> day.isBefore(today) && day.getDayOfWeek() != DayOfWeek.SUNDAY);
        assertThat(crowd).allSatisfy(car -> {
            assertThat(VisitRules.check(car, today)).isEmpty();
            assertThat(car.visits()).extracting(Visit::date).isSorted().doesNotHaveDuplicates();
        });
        assertThat(crowd.stream().map(car -> car.visits().getLast().date()).distinct())
                .hasSizeGreaterThan(40);
    }

    /** A tyre without tread would have been driven off the road long before. */
    @Test
    void nobodyDroveOnCanvas() {
        assertThat(DemoShop.histories(AUTUMN_DAY, 12, 1000)
                        .flatMap(car -> car.visits().stream())
                        .flatMap(visit -> visit.readings().stream())
                        .filter(reading -> reading.measure() == Measure.TREAD_DEPTH))
                .hasSizeGreaterThan(100_000)
                .allMatch(reading -> reading.value() > 0.5);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"2026-11-25", "2026-01-03", "2026-02-02", "2027-04-30", "2026-07-31", "2026-08-01", "2028-02-29"
            })
    void rulesHoldOnEveryDayOfTheYear(LocalDate today) {
        assertThat(DemoShop.histories(today)).allSatisfy(car -> {
            assertThat(VisitRules.check(car, today)).isEmpty();
            assertThat(car.visits()).extracting(Visit::date).doesNotHaveDuplicates();
            assertThat(car.visits()).extracting(Visit::odometerKm).isSorted().doesNotHaveDuplicates();
            for (Visit visit : car.visits()) {
                assertThat(visit.date()).isBeforeOrEqualTo(today);
                assertThat(visit.readings()).allSatisfy(reading -> assertStands(car, visit, reading));
            }
        });
    }

    @Test
    void storedWheelReadsAsItDidWhenItCameOff() {
        for (CarHistory car : shop) {
            Map<String, Double> takeOffMm = new HashMap<>();
            for (Visit visit : car.visits()) {
                for (Reading reading : treads(visit)) {
                    String groove = reading.wheelTag() + " " + reading.spot();
                    if (visit.arrivedOn().containsValue(reading.wheelTag())) {
                        takeOffMm.put(groove, reading.value());
                    } else if (takeOffMm.containsKey(groove)) {
                        assertThat(Math.abs(reading.value() - takeOffMm.get(groove)))
                                .as(groove)
                                .isLessThan(0.301);
                    }
                }
            }
        }
    }

    @Test
    void directionalTyresStayOnTheirSide() {
        for (CarHistory car : shop) {
            Map<String, Set<Object>> sides = new HashMap<>();
            for (Visit visit : car.visits()) {
                visit.leftOn().forEach((corner, tag) -> {
                    if (Boolean.TRUE.equals(
                            car.findWheel(tag).orElseThrow().tyre().directional())) {
                        sides.computeIfAbsent(tag, unused -> new HashSet<>()).add(corner.side());
                    }
                });
            }
            assertThat(sides.values()).allMatch(seen -> seen.size() == 1);
        }
    }

    private static void assertStands(CarHistory car, Visit visit, Reading reading) {
        String tag = reading.wheelTag();
        if (tag == null || reading.corner() == null) {
            return;
        }
        Optional<Wheel> wheel = car.findWheel(tag);
        assertThat(wheel).isPresent();
        assertThat(List.of(
                        visit.arrivedOn().getOrDefault(reading.corner(), ""),
                        visit.leftOn().getOrDefault(reading.corner(), "")))
                .contains(tag);
        if (reading.measure() == Measure.TREAD_DEPTH) {
            assertThat(reading.value())
                    .isLessThanOrEqualTo(
                            Objects.requireNonNull(wheel.orElseThrow().tyre().newDepthMm()) + 0.5)
                    .isGreaterThan(1.6);
        }
    }

    private static double value(Visit visit, Measure measure, Corner corner, Spot spot) {
        return visit.readings().stream()
                .filter(reading -> reading.measure() == measure && reading.corner() == corner && reading.spot() == spot)
                .findFirst()
                .orElseThrow()
                .value();
    }

    private static List<Reading> treads(Visit visit) {
        return visit.readings().stream()
                .filter(reading -> reading.measure() == Measure.TREAD_DEPTH)
                .toList();
    }

    private List<Wheel> wheels() {
        return shop.stream()
                .flatMap(car -> car.sets().stream())
                .flatMap(set -> set.wheels().stream())
                .toList();
    }

    private List<Reading> readings() {
        return shop.stream()
                .flatMap(car -> car.visits().stream())
                .flatMap(visit -> visit.readings().stream())
                .toList();
    }

    private List<Reading> readings(Measure measure) {
        return readings().stream()
                .filter(reading -> reading.measure() == measure)
                .toList();
    }
}
