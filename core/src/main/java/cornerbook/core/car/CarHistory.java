package cornerbook.core.car;

import java.util.Comparator;
import java.util.List;
import java.util.NoSuchElementException;
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

    public Visit getVisit(String id) {
        return visits.stream()
                .filter(visit -> visit.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new NoSuchElementException("no visit " + id + " of car " + vehicle.id()));
    }
}
