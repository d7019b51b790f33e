package cornerbook.app.door;

import cornerbook.app.exchange.VisitFile;
import cornerbook.core.assess.VisitRules;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Cars that a book takes: those of the invented shop, the examples, and odd ones made of both. */
final class OddBooks {
    private static final Path EXAMPLES = Path.of("../docs/examples");
    private static final int TRIES = 50;

    private final List<CarHistory> cars = new ArrayList<>(ServedShop.cars());

    OddBooks() {
        try (var files = Files.list(EXAMPLES)) {
            for (var file : files.sorted().toList()) {
                cars.add(((VisitFile.Read) VisitFile.read(file, ServedShop.TODAY)).history());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    CarHistory any(Random random) {
        var car = cars.get(random.nextInt(cars.size()));
        for (int n = 0; n < TRIES; n++) {
            var odd = odd(car, random);
            if (random.nextInt(3) > 0
                    && !odd.visits().isEmpty()
                    && VisitRules.check(odd, ServedShop.TODAY).isEmpty()) {
                return odd;
            }
        }
        return car;
    }

    /** Visits are left out, odometers jump, wheels are not noted, readings are anything that can be. */
    private static CarHistory odd(CarHistory car, Random random) {
        var visits = new ArrayList<Visit>();
        double odometerKm = random.nextInt(100_000);
        int missing = random.nextInt(4);
        int rare = 2 + random.nextInt(30);
        for (var visit : car.visits()) {
            if (missing > 0 && random.nextInt(4) < missing) {
                continue;
            }
            odometerKm += switch (random.nextInt(4)) {
                case 0 -> 0;
                case 1 -> random.nextInt(200_000);
                default -> random.nextInt(10_000);
            };
            visits.add(odd(visit, random, odometerKm, rare));
        }
        return new CarHistory(car.vehicle(), car.customer(), car.sets(), visits);
    }

    private static Visit odd(Visit visit, Random random, double odometerKm, int rare) {
        var readings = visit.readings().stream()
                .filter(reading -> random.nextInt(rare) > 0)
                .map(reading -> random.nextInt(rare) > 0 ? reading : odd(reading, random))
                .toList();
        var odd = visit.withReadings(readings).withOdometer(visit.date(), odometerKm);
        return random.nextInt(rare) == 0 ? odd.withLeftOn(Map.of()) : odd;
    }

    private static Reading odd(Reading reading, Random random) {
        double value = OddEntry.value(reading.measure(), random);
        return new Reading(
                reading.id(),
                reading.measure(),
                reading.corner(),
                reading.wheelTag(),
                reading.spot(),
                value,
                written(reading.measure(), value),
                reading.corrects(),
                reading.reason());
    }

    private static String written(Measure measure, double value) {
        return OddEntry.text(measure, value);
    }
}
