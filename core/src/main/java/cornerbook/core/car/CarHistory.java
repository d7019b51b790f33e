package cornerbook.core.car;

import cornerbook.core.corner.Corner;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Objects;
import java.util.Optional;

/** A car, its owner, its wheel sets and all its visits, earliest first. */
public record CarHistory(Vehicle vehicle, Customer customer, List<WheelSet> sets, List<Visit> visits) {
    public CarHistory {
        sets = List.copyOf(sets);
        visits = visits.stream().sorted(Comparator.comparing(Visit::date)).toList();
    }

    public Optional<Wheel> findWheel(String tag) {
        return sets.stream()
                .flatMap(set -> set.wheels().stream())
                .filter(wheel -> wheel.tag().equals(tag))
                .findFirst();
    }

    public Optional<WheelSet> findSetOf(String wheelTag) {
        return sets.stream()
                .filter(set ->
                        set.wheels().stream().anyMatch(wheel -> wheel.tag().equals(wheelTag)))
                .findFirst();
    }

    /** The set that a car stands on: that of most of its wheels, of as many that of the first in the order of the corners. */
    public Optional<WheelSet> findSetOn(Map<Corner, String> wheelAt) {
        var sets = Arrays.stream(Corner.values())
                .map(wheelAt::get)
                .filter(Objects::nonNull)
                .flatMap(tag -> findSetOf(tag).stream())
                .toList();
        return sets.stream()
                .reduce((first, other) ->
                        Collections.frequency(sets, other) > Collections.frequency(sets, first) ? other : first);
    }

    public Visit getVisit(String id) {
        return visits.stream()
                .filter(visit -> visit.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new NoSuchElementException("no visit " + id + " of car " + vehicle.id()));
    }
}
