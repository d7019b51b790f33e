package cornerbook.app.desk.visit;

import cornerbook.app.desk.Form;
import cornerbook.app.desk.OpenVisit;
import cornerbook.app.desk.Typed;
import cornerbook.app.desk.asked.WheelProposal.Fill;
import cornerbook.app.desk.visit.EntryPage.Leaving;
import cornerbook.app.desk.visit.EntryPage.Place;
import cornerbook.app.request.Told;
import cornerbook.core.assess.VisitRules;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Wheel;
import cornerbook.core.corner.Corner;
import cornerbook.core.say.Said;
import cornerbook.core.tread.judge.StoredWheelCheck;
import cornerbook.core.tread.judge.StoredWheelCheck.Identity;
import cornerbook.core.tyre.Tin;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The wheels that the car leaves on, as typed, with what was read off those that come out of the store. A stored wheel
 * that differs from its take-off stops here; the book would refuse it too, but could not say it at the corner.
 */
final class LeavingForm {
    private final OpenVisit open;
    private final Form form;
    private final Map<Corner, String> errors = new EnumMap<>(Corner.class);
    private String problem = "";

    LeavingForm(OpenVisit open, Form form) {
        this.open = open;
        this.form = form;
    }

    /** Wheel tag at each corner where one was chosen. */
    Map<Corner, String> chosen() {
        var chosen = new EnumMap<Corner, String>(Corner.class);
        for (var corner : Corner.values()) {
            if (!form.get(corner.name()).isEmpty()) {
                chosen.put(corner, form.get(corner.name()));
            }
        }
        return chosen;
    }

    /** What was read off the chosen wheels; with {@link #isSound} false when it cannot stand. */
    List<Identity> check(List<Reading> typed, LocalDate today) {
        var chosen = chosen();
        if (chosen.size() < Corner.values().length) {
            problem = Told.say(new VisitSaid.FourWheels());
            return List.of();
        }
        var leaving = open.with(typed, chosen);
        for (var found : VisitRules.check(leaving.history(), today)) {
            for (var corner : Corner.values()) {
                if (found.where().equals(leaving.path() + "/leftOn/" + corner)) {
                    errors.put(corner, Typed.sentence(Told.say(found.message())));
                }
            }
        }
        var identities = new ArrayList<Identity>();
        chosen.forEach((corner, tag) -> {
            try {
                var identity = identityAt(corner, tag);
                identities.add(identity);
                stopAt(leaving, identity).ifPresent(sentence -> errors.putIfAbsent(corner, sentence));
            } catch (IllegalArgumentException e) {
                errors.putIfAbsent(corner, Typed.sentence(e));
            }
        });
        return List.copyOf(identities);
    }

    boolean isSound() {
        return errors.isEmpty() && problem.isEmpty();
    }

    void refuse(String sentence) {
        problem = sentence;
    }

    /** What was typed and is not in the book yet, by field name; empty when it says no more than what was filled in. */
    Map<String, String> unrecorded(Fill standing) {
        var kept = new LinkedHashMap<String, String>();
        for (var corner : Corner.values()) {
            for (var name : List.of(corner.name(), dateCodeName(corner), sensorName(corner))) {
                if (!form.get(name).isEmpty()) {
                    kept.put(name, form.get(name));
                }
            }
        }
        boolean saysMore = kept.size() > Corner.values().length || !chosen().equals(standing.wheelAt());
        return saysMore ? kept : Map.of();
    }

    Leaving page(Fill standing, List<Fill> ofSets) {
        boolean typed = !chosen().isEmpty();
        var wheelAt = typed ? chosen() : standing.wheelAt();
        var places = new ArrayList<Place>();
        for (var corner : Corner.values()) {
            places.add(new Place(
                    corner,
                    wheelAt.getOrDefault(corner, ""),
                    form.get(dateCodeName(corner)),
                    form.get(sensorName(corner)),
                    errors.getOrDefault(corner, "")));
        }
        var hint = typed ? Told.labels("app/desk/visit").of("as-you-chose") : Told.say(standing.hint());
        return new Leaving(places, typed, !open.visit().leftOn().isEmpty(), hint, problem, ofSets);
    }

    private Identity identityAt(Corner corner, String tag) {
        var code = form.get(dateCodeName(corner));
        var sensor = form.get(sensorName(corner));
        return new Identity(tag, code.isEmpty() ? null : Tin.parse(code).symbols(), sensor.isEmpty() ? null : sensor);
    }

    private Optional<String> stopAt(OpenVisit leaving, Identity identity) {
        var tag = identity.wheelTag();
        var wheel = open.history().findWheel(tag).orElse(null);
        if (wheel == null || open.visit().arrivedOn().containsValue(tag)) {
            return Optional.empty();
        }
        return StoredWheelCheck.compareIdentity(wheel, identity)
                .or(() -> StoredWheelCheck.compareDepths(leaving.history(), leaving.visit(), tag))
                .map(stop -> Told.say(leaveItOff(Typed.sentence(Told.say(stop)), tag, identity.sensorId())));
    }

    private Said leaveItOff(String stop, String tag, @Nullable String sensorId) {
        var carrier = open.history().sets().stream()
                .flatMap(set -> set.wheels().stream())
                .filter(wheel -> !wheel.tag().equals(tag) && wheel.sensorId() != null)
                .filter(wheel -> String.valueOf(wheel.sensorId()).equalsIgnoreCase(sensorId))
                .map(Wheel::tag)
                .findFirst();
        var place = open.history().findSetOf(tag).map(set -> set.storePlace());
        return new VisitSaid.LeaveItOff(Said.verbatim(stop), carrier.orElse(null), tag, place.orElse(null));
    }

    private static String dateCodeName(Corner corner) {
        return "dateCode." + corner;
    }

    private static String sensorName(Corner corner) {
        return "sensor." + corner;
    }
}
