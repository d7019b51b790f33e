package cornerbook.app.bay;

import cornerbook.app.bay.BaySaid.ChangeReason;
import cornerbook.app.book.bay.BayLedger;
import cornerbook.app.book.bay.Departure;
import cornerbook.app.book.bay.LeftOpen;
import cornerbook.app.book.bay.Misplaced;
import cornerbook.app.book.store.Arrival;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.visit.Because;
import cornerbook.app.book.visit.VisitState;
import cornerbook.app.book.work.Declined;
import cornerbook.app.book.work.Remark;
import cornerbook.app.book.work.WorkTick;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Typed;
import cornerbook.app.log.Faults;
import cornerbook.app.request.PageException;
import cornerbook.app.request.Told;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Subject;
import cornerbook.core.release.OpenPoint;
import cornerbook.core.say.Refused;
import cornerbook.core.tool.ShopTool;
import cornerbook.core.tread.judge.StoredWheelCheck.Identity;
import cornerbook.core.tyre.Tin;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import tools.jackson.databind.JsonNode;

/** Takes a batch of entries for one visit, in their order, each on its own: one that is refused keeps no other back. */
final class EntryIntake {
    /** Common practice, no source. */
    private static final Duration CLOCKS_DIFFER = Duration.ofMinutes(2);

    private static final String KINDS =
            "reading, tick, remark, answer, photo choice, tool, leaving, declined, agreed, work, put right, move, state, departure";

    private final Desk desk;
    private final BayLedger ledger;
    private final String visitId;
    private final KnownPeople people;

    private final Set<String> movedTo = new TreeSet<>();

    private boolean changed;

    EntryIntake(Desk desk, String visitId) {
        this.people = KnownPeople.onTabletThatAsks(desk);
        this.desk = desk;
        this.ledger = desk.book().bay();
        this.visitId = visitId;
    }

    /** The visits that something was moved to. */
    Set<String> movedTo() {
        return Set.copyOf(movedTo);
    }

    /** Whether anything was stored. */
    boolean changed() {
        return changed;
    }

    /**
     * One answer for each entry.
     *
     * @throws RefusedEntry when it is no batch
     * @throws BookException when the book fails; entries before are stored, and may be sent again
     */
    List<EntryAnswer> take(JsonNode batch) {
        if (!batch.path("entries").isArray()) {
            throw new RefusedEntry("/entries", BaySaid.Unreadable.NO_LIST);
        }
        var answers = new ArrayList<EntryAnswer>();
        for (var node : batch.path("entries")) {
            answers.add(answer(new Entry(node, "/entries/" + answers.size())));
        }
        return answers;
    }

    private EntryAnswer answer(Entry entry) {
        var id = entry.node().path("id").asString("");
        try {
            refuseFuture(entry.madeAt(), desk.now(), entry.where() + "/at");
            var arrival = store(entry);
            changed |= arrival != Arrival.ALREADY;
            return EntryAnswer.of(id, arrival);
        } catch (RefusedEntry e) {
            return EntryAnswer.refused(id, e.said(), e.pointer());
        } catch (BookException e) {
            if (e.isFailure()) {
                throw e;
            }
            return EntryAnswer.refused(id, e.said(), entry.where());
        } catch (RuntimeException e) {
            // Each in its own fence: one that this program cannot take keeps no other back.
            var fault = Faults.note("taking an entry of visit " + visitId, e);
            return EntryAnswer.refused(id, new BaySaid.EntryFault(fault), entry.where());
        }
    }

    /**
     * Refuses what a tablet made later than now, beyond what clocks and the network differ by.
     *
     * @param pointer where the moment stands in what was sent
     */
    static void refuseFuture(Instant madeAt, Instant now, String pointer) {
        if (madeAt.isAfter(now.plus(CLOCKS_DIFFER))) {
            throw new RefusedEntry(pointer, new BaySaid.TimeAhead(madeAt, now));
        }
    }

    private Arrival store(Entry entry) {
        people.require(entry.person(), entry.where() + "/person");
        return switch (entry.text("kind")) {
            case "reading" -> ledger.addReading(visitId, reading(entry), entry.person(), entry.madeAt());
            case "tick" -> ledger.addTick(visitId, tick(entry), entry.optionalText("shown"));
            case "remark" -> ledger.addRemark(visitId, remark(entry));
            case "answer" ->
                ledger.answerRival(
                        entry.id(),
                        visitId,
                        entry.text("rival"),
                        entry.flag("take"),
                        entry.person(),
                        entry.madeAt(),
                        Told.reader());
            case "photo choice" ->
                desk.book()
                        .photos()
                        .choose(
                                visitId,
                                entry.text("photo"),
                                entry.optionalWord("part", Subject.Part.class),
                                entry.flag("onSheet"));
            case "tool" ->
                desk.book()
                        .usedTools()
                        .choose(entry.id(), visitId, entry.word("tool", ShopTool.Kind.class), entry.mark("toolId"));
            case "leaving" -> leave(entry);
            case "declined" -> ledger.addDeclined(visitId, declined(entry));
            case "agreed" -> workAsked().agreed(entry);
            case "work" -> workAsked().answered(entry);
            case "put right" -> putRight(entry);
            case "move" -> move(entry);
            case "state" ->
                desk.book()
                        .visits()
                        .say(
                                entry.id(),
                                visitId,
                                entry.word("state", VisitState.class),
                                entry.person(),
                                entry.madeAt());
            case "departure" -> ledger.addDeparture(visitId, departure(entry));
            default -> throw entry.refused("kind", new BaySaid.OneOf(KINDS));
        };
    }

    private static Reading reading(Entry entry) {
        var measure = entry.word("measure", Measure.class);
        var text = entry.text("written");
        var shown = entry.optionalText("shown");
        try {
            return new Reading(
                    entry.id(),
                    measure,
                    entry.optionalWord("corner", Corner.class),
                    entry.optionalText("wheel"),
                    entry.optionalWord("spot", Spot.class),
                    Typed.valueOf(measure, text),
                    Typed.withUnit(text, measure),
                    shown,
                    shown == null ? null : reason(entry));
        } catch (IllegalArgumentException e) {
            throw new RefusedEntry(entry.where() + "/written", Refused.said(e));
        }
    }

    /** As the tablet names it, in words of the language of who said so: the book keeps what a person says. */
    private static String reason(Entry entry) {
        var said = entry.optionalText("reason");
        return said == null
                ? Told.say(ChangeReason.NOT_SAID)
                : Arrays.stream(ChangeReason.values())
                        .filter(known -> known.name().equals(said))
                        .findFirst()
                        .map(Told::say)
                        .orElse(said);
    }

    private WorkTick tick(Entry entry) {
        var key = entry.text("tick");
        var car = desk.getHistoryOfVisit(visitId);
        var reason = entry.optionalText("reason");
        boolean done = entry.flag("done");
        if (!Ticks.of(car.vehicle()).contains(key) && (done || !LeftOpen.isPlace(key))) {
            throw entry.refused("tick", BaySaid.Wanted.STEP);
        }
        if (done && reason != null) {
            throw entry.refused("reason", BaySaid.Wanted.NO_REASON);
        }
        var wheel = key.startsWith(WorkTick.FASTENER) ? entry.optionalText("wheel") : null;
        if (wheel != null && car.findWheel(wheel).isEmpty()) {
            throw entry.refused("wheel", BaySaid.Wanted.WHEEL);
        }
        return new WorkTick(
                entry.id(),
                key,
                wheel,
                new WorkTick.Answer(done, reason),
                true,
                entry.texts("seen"),
                entry.person(),
                entry.madeAt());
    }

    private Declined declined(Entry entry) {
        var saidBy = entry.optionalText("saidBy");
        try {
            return desk.declined(
                    desk.getOpenVisit(visitId),
                    entry.id(),
                    entry.text("advice"),
                    entry.flag("declined"),
                    saidBy == null ? "" : saidBy,
                    entry.person(),
                    entry.madeAt());
        } catch (PageException e) {
            throw new RefusedEntry(entry.where() + "/advice", e.said());
        }
    }

    private WorkAsked workAsked() {
        var open = desk.getOpenVisit(visitId);
        return new WorkAsked(desk, open, desk.advice(open));
    }

    private static Remark remark(Entry entry) {
        return new Remark(
                entry.id(), entry.word("topic", Remark.Topic.class), entry.words(), entry.person(), entry.madeAt());
    }

    /** The same wheels again are nothing new; others than the tablet showed are asked about first. */
    private Arrival leave(Entry entry) {
        var wheels = wheels(entry.child("wheels"));
        var now = desk.getOpenVisit(visitId).visit().leftOn();
        if (now.equals(wheels)) {
            return Arrival.ALREADY;
        }
        if (!now.isEmpty() && !now.equals(wheels(entry.child("shown")))) {
            return Arrival.CONFLICT;
        }
        var identities = new ArrayList<Identity>();
        wheels.forEach((corner, tag) -> {
            var code = entry.optionalText("dateCode." + corner);
            try {
                identities.add(new Identity(
                        tag, code == null ? null : Tin.parse(code).symbols(), entry.optionalText("sensor." + corner)));
            } catch (IllegalArgumentException e) {
                throw new RefusedEntry(entry.where() + "/dateCode." + corner, Refused.said(e));
            }
        });
        var because = new Because(null, Told.say(ChangeReason.NOT_SAID), entry.person(), desk.today());
        desk.book().visits().recordLeaving(visitId, wheels, identities, List.of(), because);
        desk.learning().learnSoon();
        return Arrival.STORED;
    }

    /** The odometer, read again; others than the tablet showed are not written over. */
    private Arrival putRight(Entry entry) {
        var stands = desk.getVisit(visitId);
        var seen = stands.withOdometer(stands.date(), odometerKm(entry, "seen"));
        var because = new Because(entry.id(), reason(entry), entry.person(), desk.today());
        var arrival = desk.book()
                .visits()
                .putRight(seen, stands.withOdometer(stands.date(), odometerKm(entry, "odometer")), because);
        desk.learning().learnSoon();
        return arrival;
    }

    /** What stands in the wrong place, to where it belongs. */
    private Arrival move(Entry entry) {
        var to = entry.optionalText("to");
        var goal = new Misplaced.Goal(
                to == null ? visitId : to, entry.optionalWord("corner", Corner.class), entry.optionalFlag("instead"));
        var because = new Because(entry.id(), Told.say(ChangeReason.WRONG_PLACE), entry.person(), desk.today());
        var arrival = desk.book()
                .misplaced()
                .move(
                        visitId,
                        entry.word("thing", Misplaced.Thing.class),
                        entry.text("moved"),
                        goal,
                        because,
                        entry.madeAt());
        movedTo.add(goal.visitId());
        desk.learning().learnSoon();
        return arrival;
    }

    private static double odometerKm(Entry entry, String name) {
        try {
            return Typed.valueOf(entry.text(name), "km");
        } catch (IllegalArgumentException e) {
            throw new RefusedEntry(entry.where() + "/" + name, Refused.said(e));
        }
    }

    private static Map<Corner, String> wheels(Entry entry) {
        var wheels = new EnumMap<Corner, String>(Corner.class);
        for (var corner : Corner.values()) {
            var tag = entry.optionalText(corner.name());
            if (tag != null) {
                wheels.put(corner, tag);
            }
        }
        return wheels;
    }

    /** Each point that is open by what the book has needs a reason, and what is unsafe a customer who knows, whatever the tablet knew. */
    private Departure departure(Entry entry) {
        var reasons = entry.child("reasons");
        var given = new ArrayList<Departure.Reason>();
        var acknowledgedBy = entry.optionalText("acknowledgedBy");
        var open = desk.openPoints(desk.getOpenVisit(visitId));
        for (var point : open) {
            var reason = reasons.optionalText(point.key());
            if (reason == null) {
                throw new RefusedEntry(reasons.where() + "/" + point.key(), new BaySaid.StillOpen(point));
            }
            if (point.kind() == OpenPoint.Kind.UNSAFE && acknowledgedBy == null) {
                throw new RefusedEntry(entry.where() + "/acknowledgedBy", new BaySaid.CustomerMustKnow(point));
            }
            given.add(new Departure.Reason(point.key(), Told.say(point), reason));
        }
        return new Departure(
                entry.id(),
                entry.person(),
                entry.madeAt(),
                given,
                open.stream().anyMatch(point -> point.kind() == OpenPoint.Kind.UNSAFE) ? acknowledgedBy : null);
    }
}
