package cornerbook.app.bay;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toList;

import cornerbook.app.book.bay.LeftOpen;
import cornerbook.app.book.bay.LeftTogether;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.OpenVisit;
import cornerbook.app.judge.Judged;
import cornerbook.core.assess.Advice;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Visit;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What waits when a car comes in: what was asked for at the visit before, with what it was handed over, what was asked for at a set
 * when it was last on the car, and what hands left open at any visit and nobody has read since.
 *
 * @param before the visit before; null at the first
 */
record Matters(@Nullable Visit before, List<Asked> asked, List<Left> left, Desk desk) {
    private record Asked(Advice advice, Visit visit) {}

    /**
     * Something left open.
     *
     * @param since day of the visit at which it was first said
     * @param visit at which it was last said
     */
    private record Left(LeftOpen point, LocalDate since, Visit visit) {}

    private record Since(LocalDate day, Visit visit) {}

    static Matters of(Desk desk, OpenVisit open) {
        var history = open.history();
        var before = history.visits().subList(0, history.visits().indexOf(open.visit()));
        if (before.isEmpty()) {
            return new Matters(null, List.of(), List.of(), desk);
        }
        var last = before.getLast();
        var asked = Stream.concat(
                        asked(desk, history, last),
                        history.sets().stream()
                                .filter(set -> !wasOn(set, last))
                                .flatMap(set -> ofStored(set, desk, history, before)))
                .toList();
        return new Matters(last, asked, left(desk, before, open.visit()), desk);
    }

    private static Stream<Asked> asked(Desk desk, CarHistory history, Visit visit) {
        // Nothing is asked where it cannot be judged.
        return Judged.of(
                "visit " + visit.id(),
                () -> Advice.of(history, visit, desk.assessor().findings(history, visit.id())).stream()
                        .filter(Advice::mayBeDeclined)
                        .map(advice -> new Asked(advice, visit))
                        .toList())
                .orElse(List.of())
                .stream();
    }

    /** A set that lay in store at the visit before was judged when it came off; what was asked for then still waits. */
    private static Stream<Asked> ofStored(WheelSet set, Desk desk, CarHistory history, List<Visit> before) {
        return before.reversed().stream().filter(visit -> wasOn(set, visit)).findFirst().stream()
                .flatMap(visit -> asked(desk, history, visit))
                .filter(each -> set.id().equals(each.advice().first().subject().setId()));
    }

    private static boolean wasOn(WheelSet set, Visit visit) {
        return set.wheels().stream()
                .map(Wheel::tag)
                .anyMatch(tag ->
                        visit.arrivedOn().containsValue(tag) || visit.leftOn().containsValue(tag));
    }

    private static List<Left> left(Desk desk, List<Visit> before, Visit now) {
        Map<String, Left> left = new LinkedHashMap<>();
        for (var visit : before) {
            var ticks = desk.book().bay().read(visit.id()).ticks();
            left.values().removeIf(each -> each.point().isClosedAt(visit, ticks));
            for (var point : LeftOpen.of(visit, ticks)) {
                var since = left.get(point.key());
                left.put(point.key(), new Left(point, since == null ? visit.date() : since.since(), visit));
            }
        }
        var ticks = desk.book().bay().read(now.id()).ticks();
        left.values().removeIf(each -> each.point().isClosedAt(now, ticks));
        return List.copyOf(left.values());
    }

    List<BaySheet.Matter> in(BayReader bay) {
        if (before == null) {
            return List.of();
        }
        var last = bay.reader().day(before.date());
        var departure = desk.book().bay().findDeparture(before.id());
        Map<Since, List<LeftOpen>> since = left.stream()
                .filter(each -> !each.visit().equals(before)
                        || departure.filter(gone -> gone.tells(each.point())).isEmpty())
                .collect(groupingBy(
                        each -> new Since(each.since(), each.visit()),
                        LinkedHashMap::new,
                        mapping(Left::point, toList())));
        return Stream.of(
                        since.entrySet().stream().flatMap(each -> lines(each.getKey(), each.getValue(), bay)),
                        departure.stream()
                                .flatMap(gone -> gone.leftOpen(List.of(), bay.reader()).stream())
                                .map(said -> new BaySheet.Matter(bay.say(said), last, null)),
                        asked.stream()
                                .map(each -> new BaySheet.Matter(
                                        bay.reader().begin(each.advice().asked()),
                                        bay.reader().day(each.visit().date()),
                                        each.advice().first().subject().setId())))
                .flatMap(each -> each)
                .toList();
    }

    private Stream<BaySheet.Matter> lines(Since since, List<LeftOpen> points, BayReader bay) {
        var ticks = desk.book().bay().read(since.visit().id()).ticks();
        return LeftTogether.lines(since.visit(), ticks, points::contains, bay.reader()).stream()
                .map(said -> new BaySheet.Matter(bay.say(said), bay.reader().day(since.day()), null));
    }
}
