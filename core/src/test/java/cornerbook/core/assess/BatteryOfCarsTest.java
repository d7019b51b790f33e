package cornerbook.core.assess;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.battery.BatterySaid;
import cornerbook.core.battery.Chemistry;
import cornerbook.core.battery.RatingStandard;
import cornerbook.core.battery.TwelveVoltBattery;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Cars;
import cornerbook.core.car.JobCard;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Facts;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * 12 V batteries as they come in, 60 A·h and 500 A (EN) when new, each judged with the whole car. What is expected was written by
 * hand, with its reason or source, before it was judged. The next visit is agreed for 15 April 2027.
 */
class BatteryOfCarsTest {
    private static final LocalDate NEXT = LocalDate.of(2027, 4, 15);

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/battery/cars.csv", delimiter = '|', numLinesToSkip = 1)
    void whatIsSaidOfIt(
            String name,
            String car,
            Chemistry cells,
            @Nullable Double chargeBelowV,
            @Nullable LocalDate fitted,
            @Nullable String earlier,
            @Nullable Double volts,
            @Nullable Double celsius,
            @Nullable Double cranking,
            @Nullable Double voltsCharged,
            @Nullable Double crankingCharged,
            @Nullable Double capacity,
            @Nullable Double standby,
            @Nullable Verdict verdict,
            @Nullable String said,
            @Nullable String notJudged,
            String reason) {
        boolean rated = cells != Chemistry.LITHIUM;
        var battery = new TwelveVoltBattery(
                cells, 60, rated ? 500.0 : null, rated ? RatingStandard.EN : null, fitted, chargeBelowV);
        var visits = new ArrayList<Visit>();
        for (var before : earlier == null ? new String[0] : earlier.split(", ", -1)) {
            var dayAndCurrent = before.split(" ", -1);
            visits.add(visit(
                    LocalDate.parse(dayAndCurrent[0]),
                    List.of(read(Measure.BATTERY_CRANKING_CURRENT, Double.valueOf(dayAndCurrent[1])))));
        }
        visits.add(visit(
                Cars.AUTUMN,
                Stream.of(
                                read(Measure.BATTERY_VOLTAGE, volts),
                                read(Measure.BATTERY_TEMPERATURE, celsius),
                                read(Measure.BATTERY_CRANKING_CURRENT, cranking),
                                read(Measure.BATTERY_VOLTAGE_CHARGED, voltsCharged),
                                read(Measure.BATTERY_CRANKING_CURRENT_CHARGED, crankingCharged),
                                read(Measure.BATTERY_CAPACITY, capacity),
                                read(Measure.STANDBY_CURRENT, standby))
                        .filter(Objects::nonNull)
                        .toList()));

        var assessment = new Assessor(Cars.LIMITS).assess(history(car, battery, visits), "v-" + Cars.AUTUMN);

        assertThat(assessment.findings().stream()
                        .filter(finding -> finding.subject().part() == Subject.Part.BATTERY)
                        .map(finding -> finding.verdict() + " " + Facts.of(finding.plainWords())))
                .as(reason)
                .isEqualTo(verdict == null ? List.of() : List.of(verdict + " " + said));
        assertThat(assessment.notJudged().stream()
                        .filter(BatterySaid.class::isInstance)
                        .map(Facts::of)
                        .collect(Collectors.joining(", ")))
                .as(reason)
                .isEqualTo(notJudged == null ? "" : notJudged);
    }

    private static CarHistory history(String car, TwelveVoltBattery battery, List<Visit> visits) {
        var vehicle = Cars.withBattery(battery);
        return Cars.history(car.equals("electric") ? vehicle : Cars.combustion(vehicle), visits.toArray(Visit[]::new));
    }

    private static Visit visit(LocalDate day, List<Reading> readings) {
        return new Visit(
                "v-" + day,
                day,
                48_000,
                Cars.at("S-"),
                Cars.at("S-"),
                readings,
                new JobCard(null, List.of(), null, NEXT, List.of()),
                Set.of());
    }

    private static @Nullable Reading read(Measure measure, @Nullable Double value) {
        return value == null ? null : Cars.reading(measure, null, null, null, value);
    }
}
