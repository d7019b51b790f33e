package cornerbook.app.exchange;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Tyre;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A car of which little is known yet: what was typed of it, and the wheels that it stands on. */
public final class NewCar {
    private static final String PLATE = "/vehicle/plate";
    private static final String NAME = "/vehicle/name";
    private static final String SIZE = "/vehicle/frontAxle/tyreSize";
    private static final String REAR_SIZE = "/vehicle/rearAxle/tyreSize";

    private NewCar() {}

    /**
     * The car without wheels. One without a name is called by its plate; both axles have the same size of tyre unless the rear's
     * was typed.
     *
     * @param typed by pointer of the visit file
     */
    public static VisitFile.Result read(
            String vehicleId, String customerId, Map<String, String> typed, LocalDate today) {
        var completed = new HashMap<>(typed);
        complete(completed, NAME, PLATE);
        complete(completed, REAR_SIZE, SIZE);
        return CarForm.readNew(vehicleId, customerId, completed, today);
    }

    private static void complete(Map<String, String> typed, String pointer, String other) {
        if (typed.getOrDefault(pointer, "").isEmpty()) {
            typed.put(pointer, typed.getOrDefault(other, ""));
        }
    }

    /**
     * The same on its wheels, each with a tag to be written on it: plate and corner.
     *
     * @param spare whether a full-size spare is the fifth
     */
    public static CarHistory onItsWheels(CarHistory car, SeasonKind season, boolean spare) {
        var vehicle = car.vehicle();
        var plate = vehicle.plate().toUpperCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
        var onCar = Arrays.stream(Corner.values())
                .map(corner -> vehicle.axle(corner.axle()).tyreSize());
        var sizes = Stream.concat(onCar, spare ? Stream.of(vehicle.front().tyreSize()) : Stream.empty())
                .toList();
        var set = new WheelSet(
                vehicle.id() + "-" + plate,
                season,
                null,
                IntStream.range(0, sizes.size())
                        .mapToObj(place -> new Wheel(plate + "-" + (place + 1), Tyre.ofSize(sizes.get(place)), null))
                        .toList());
        return new CarHistory(vehicle, car.customer(), List.of(set), List.of());
    }
}
