package cornerbook.app.cars;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.exchange.AssessmentJson;
import cornerbook.core.assess.Assessment;
import cornerbook.core.assess.VisitRules;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Reading;
import cornerbook.words.Reader;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must never be said of a car is not said either when readings are missing, or read otherwise than in the library. */
class ChangedCarsTest {
    /** Changes of each car. */
    private static final int CHANGES = 1;

    private static final double LEFT_OUT = 0.15;
    private static final double READ_OTHERWISE = 0.3;

    /** Every third car: all of them take minutes. */
    static List<String> names() {
        var all = CarLibrary.namesOfToday();
        return IntStream.range(0, all.size())
                .filter(place -> place % 3 == 0)
                .mapToObj(all::get)
                .toList();
    }

    /** The readings of a visit stand in the order in which they were taken, which says nothing. */
    @ParameterizedTest
    @MethodSource("names")
    void aChangedCarIsNeverToldWhatMustNotBe(String name) {
        var car = CarLibrary.car(CarLibrary.text(name));
        for (int seed = 0; seed < CHANGES; seed++) {
            var random = new Random(name.hashCode() + 31L * seed);
            var changed = changed(car, random);
            var assessment = CarLibrary.assess(changed);
            assertThat(NeverSaid.faults(assessment)).as("seed %s", seed).isEmpty();
            assertThat(differences(assessment, CarLibrary.assess(shuffled(changed, random))))
                    .as("in another order, seed %s", seed)
                    .isEmpty();
        }
    }

    /** The lines that differ. */
    private static List<String> differences(Assessment one, Assessment other) {
        var here = lines(one);
        var there = lines(other);
        return IntStream.range(0, Math.max(here.size(), there.size()))
                .filter(line -> line >= here.size()
                        || line >= there.size()
                        || !here.get(line).equals(there.get(line)))
                .limit(5)
                .mapToObj(line -> "%d: %s%n%s"
                        .formatted(
                                line,
                                line < here.size() ? here.get(line) : "",
                                line < there.size() ? there.get(line) : ""))
                .toList();
    }

    private static List<String> lines(Assessment assessment) {
        return AssessmentJson.write(assessment, Reader.DEFAULT).lines().toList();
    }

    /** The last visit with some readings left out and others read otherwise, within what the book takes. */
    private static CarHistory changed(CarHistory car, Random random) {
        var readings = new ArrayList<>(car.visits().getLast().readings());
        readings.removeIf(reading -> random.nextDouble() < LEFT_OUT);
        for (int i = 0; i < readings.size(); i++) {
            if (random.nextDouble() < READ_OTHERWISE) {
                var before = readings.get(i);
                readings.set(i, otherwise(before, random));
                if (!VisitRules.check(with(car, readings), CarLibrary.TODAY).isEmpty()) {
                    readings.set(i, before);
                }
            }
        }
        return with(car, readings);
    }

    private static Reading otherwise(Reading reading, Random random) {
        double value = value(reading, random);
        return new Reading(
                reading.id(),
                reading.measure(),
                reading.corner(),
                reading.wheelTag(),
                reading.spot(),
                value,
                String.valueOf(value),
                reading.corrects(),
                reading.reason());
    }

    /** Another word, or a value that a worn, leaking, cold or hurried car may have. */
    private static double value(Reading reading, Random random) {
        var measure = reading.measure();
        var scale = measure.scale();
        if (scale != null) {
            return random.nextInt(scale.words().size());
        }
        double value = switch (measure) {
            case TREAD_DEPTH, PAD_THICKNESS, PAD_THICKNESS_TRAILING -> reading.value() * random.nextDouble();
            case DISC_THICKNESS -> reading.value() - 3 * random.nextDouble();
            case BATTERY_TEMPERATURE, TYRE_TEMPERATURE, OUTSIDE_TEMPERATURE -> 30 - 60 * random.nextDouble();
            case BATTERY_VOLTAGE, BATTERY_VOLTAGE_CHARGED -> 11 + 2.5 * random.nextDouble();
            case DISC_RUST, BRAKE_FLUID_WATER -> measure.highest() * random.nextDouble();
            default -> reading.value() * (0.5 + random.nextDouble());
        };
        double tenths = Math.round(10 * value) / 10.0;
        return Math.clamp(tenths, measure.lowest(), measure.highest());
    }

    private static CarHistory shuffled(CarHistory car, Random random) {
        var readings = new ArrayList<>(car.visits().getLast().readings());
        Collections.shuffle(readings, random);
        var sets = new ArrayList<>(car.sets());
        Collections.shuffle(sets, random);
        var again = with(car, readings);
        return new CarHistory(again.vehicle(), again.customer(), sets, again.visits());
    }

    private static CarHistory with(CarHistory car, List<Reading> readings) {
        var visits = new ArrayList<>(car.visits());
        visits.set(visits.size() - 1, visits.getLast().withReadings(readings));
        return new CarHistory(car.vehicle(), car.customer(), car.sets(), visits);
    }
}
