package cornerbook.app.book.rack;

import cornerbook.core.corner.SeasonKind;
import cornerbook.core.store.Place;
import cornerbook.core.store.StoreMap;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A set of wheels of a car, on the car or off.
 *
 * @param place where it lies or, while it is on the car, lay before, as it was written; null when nobody knows
 * @param ran when it was on the car last; empty dates when it never was
 * @param last what was done with it last in the store; null when nothing was
 */
public record KeptSet(
        Key key,
        SeasonKind season,
        List<String> tags,
        @Nullable String place,
        Owner owner,
        Ran ran,
        @Nullable SetMove last) {
    public KeptSet {
        tags = List.copyOf(tags);
    }

    /** By what the book knows it. */
    public record Key(String vehicleId, String setId) {}

    /** Whose it is. */
    public record Owner(
            String vehicleName,
            String plate,
            String customerId,
            String customerName,
            @Nullable String phone) {}

    /** Whether a set is on its car. */
    public enum On {
        OFF,
        /** The car came on it, and nobody has recorded yet on what it leaves: it may be off by now. */
        CAME,
        /** The car left on it. */
        LEFT
    }

    /**
     * When it ran.
     *
     * @param on by the car's last visit, and by what was put away since
     * @param cameOn the last visit to which the car came on it; null when it never did
     */
    public record Ran(On on, @Nullable LocalDate cameOn) {
        public boolean onCar() {
            return on != On.OFF;
        }
    }

    /** Whether it lies in the store at a place that somebody wrote down. */
    public boolean lies() {
        return place != null && !ran.onCar();
    }

    /** Whether it lies at this place. */
    public boolean liesAt(Place at) {
        return lies() && StoreMap.key(String.valueOf(place)).equals(StoreMap.key(at.name()));
    }

    /** Whether it was taken out and is neither back nor on the car. */
    public boolean isOut() {
        return !ran.onCar() && last != null && last.isOut() && place == null;
    }

    /** Whether it is off the car, was not taken out, and nobody knows where it lies. */
    public boolean isLost() {
        return !ran.onCar() && place == null && !isOut();
    }

    /** Since when it is off the car, or lies there; empty when nobody knows. */
    public Optional<LocalDate> since(ZoneId shop) {
        return Stream.of(
                        Optional.ofNullable(ran.cameOn()),
                        Optional.ofNullable(last).map(move -> move.day(shop)))
                .flatMap(Optional::stream)
                .max(LocalDate::compareTo);
    }
}
