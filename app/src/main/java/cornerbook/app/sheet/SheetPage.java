package cornerbook.app.sheet;

import static cornerbook.app.sheet.SheetText.line;
import static cornerbook.app.sheet.SheetText.name;

import cornerbook.app.book.bay.Departure;
import cornerbook.app.book.record.VisitNotes;
import cornerbook.app.book.work.Declined;
import cornerbook.app.book.work.Remark;
import cornerbook.app.book.work.StandingTicks;
import cornerbook.app.book.work.WorkTick;
import cornerbook.app.picture.battery.BatteryOverVisits;
import cornerbook.app.picture.brake.BrakeFigure;
import cornerbook.app.picture.brake.SeizingOverMonths;
import cornerbook.core.assess.Assessment;
import cornerbook.core.assess.NotJudged;
import cornerbook.core.brake.burnish.BurnishPlan;
import cornerbook.core.brake.burnish.judge.BurnishPlanning;
import cornerbook.core.car.Measure;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SetOf;
import cornerbook.core.finding.RunHistory;
import cornerbook.core.finding.Verdict;
import cornerbook.core.release.OpenPoint;
import cornerbook.core.release.Release;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Chance;
import cornerbook.core.say.Said;
import cornerbook.core.say.Verbatim;
import cornerbook.core.tread.judge.SetForecast;
import cornerbook.words.Labels;
import cornerbook.words.Reader;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What the sheet says, in the words of who takes it home. */
public final class SheetPage {
    public static final String ROOM = "app/sheet";

    /** Between the seasons' days; a guide is all that a sheet can be. */
    private static final double BURNISH_AIR_C = 10;

    /** From one speed to the other. */
    private static final Between BURNISH_SPEEDS = new Between(65, 15, "km/h", 0);

    /** Lines on the first page of what could not be judged. */
    static final int NOT_JUDGED_FIRST = 4;

    /** Lines of what keeps the car from leaving, at least: what is unsafe stands among what is to be done as well. */
    private static final int LEAST_LINES = 3;

    private static final double HUNDRED = 100;

    private final Assessment assessment;
    private final Letterhead letterhead;
    private final Instant madeAt;
    private final VisitNotes notes;
    private final List<Said> agreed;
    private final SheetRoom room;
    private final Reader reader;
    private final Labels labels;
    private final Visit visit;
    private final StandingReadings readings;
    private final Map<Corner, String> wheelAt;

    SheetPage(
            Assessment assessment,
            Letterhead letterhead,
            Instant madeAt,
            VisitNotes notes,
            List<Said> agreed,
            SheetRoom room,
            Reader reader) {
        this.assessment = assessment;
        this.letterhead = letterhead;
        this.madeAt = madeAt;
        this.notes = notes;
        this.agreed = List.copyOf(agreed);
        this.room = room;
        this.reader = reader;
        this.labels = reader.labels(ROOM);
        this.visit = assessment.visit();
        this.readings = new StandingReadings(visit);
        this.wheelAt = visit.leftOn().isEmpty() ? visit.arrivedOn() : visit.leftOn();
    }

    String write() {
        return SheetTemplates.fill("handover", this);
    }

    /**
     * One fact on top of the sheet.
     *
     * @param what in words
     */
    public record Fact(String what, String value) {}

    public Labels labels() {
        return labels;
    }

    public String language() {
        return reader.language().tag();
    }

    public String css() {
        return SheetStyle.css(labels);
    }

    public String shop() {
        return name(letterhead.shopName());
    }

    /** Where the shop is found and called; empty when it said neither. */
    public String shopReached() {
        return letterhead.reached();
    }

    public boolean invented() {
        return letterhead.invented();
    }

    public String car() {
        return name(assessment.history().vehicle().name());
    }

    public String day() {
        return reader.day(visit.date());
    }

    public List<Fact> facts() {
        return List.of(
                new Fact(labels.of("plate"), name(assessment.history().vehicle().plate())),
                new Fact(labels.of("odometer"), reader.say(Amount.of(visit.odometerKm(), "km"))),
                new Fact(labels.of("date"), day()),
                new Fact(labels.of("customer"), customer()));
    }

    /** What the customer complains of, and what was damaged before work began; those that were written down. */
    public List<Fact> onArrival() {
        return Stream.of(Remark.Topic.COMPLAINT, Remark.Topic.ARRIVAL_DAMAGE)
                .flatMap(topic -> notes.remark(topic).map(words -> new Fact(reader.say(topic), line(words))).stream())
                .toList();
    }

    /** What keeps the car from leaving, and nobody let it leave with: while there is any, the sheet is a draft. */
    public List<String> open() {
        var open = OpenPoint.together(notes.unanswered(assessment.open())).stream()
                .map(reader::say)
                .toList();
        return open.isEmpty() && isOnlyBegun() ? List.of(labels.of("nothing-done")) : open;
    }

    /** Readings alone are no visit that ended, unless the desk ended it. */
    private boolean isOnlyBegun() {
        return notes.lastDeparture().isEmpty()
                && visit.leftOn().isEmpty()
                && assessment.workDone().isEmpty()
                && !isEndedAtDesk();
    }

    /** No tablet took part, somebody's name stands under it, and the next visit was agreed or the day is over. */
    private boolean isEndedAtDesk() {
        return notes.authors().isEmpty()
                && notes.ticks().isEmpty()
                && visit.card().technician() != null
                && (visit.card().nextVisitDue() != null || reader.date(madeAt).isAfter(visit.date()));
    }

    public CornersSection corners() {
        return new CornersSection(assessment, readings, wheelAt, reader);
    }

    public FindingsSection findings() {
        return new FindingsSection(assessment, room, reader);
    }

    /** Whether a wheel is known to be tight by ticks. */
    public boolean ticked() {
        return !visit.tightened().isEmpty();
    }

    public RecordSection record() {
        return new RecordSection(assessment, notes, readings, wheelAt, room, reader);
    }

    /** What else is open, beyond the room of the first page. */
    public Lines openLines() {
        return Lines.of(open(), Math.max(room.lines(), LEAST_LINES));
    }

    /** When the wheels are due to be tightened again, if one went on, and when the car is due altogether. */
    public List<Fact> comeBack() {
        var facts = new ArrayList<Fact>();
        var retorque = assessment.retorque();
        if (retorque != null) {
            facts.add(new Fact(
                    labels.of("tighten-again"),
                    labels.of(
                            "retorque",
                            "odometer",
                            Amount.of(retorque.dueOdometerKm(), "km"),
                            "day",
                            retorque.dueDate(),
                            "torque",
                            retorque.tightenedTo())));
        }
        facts.add(new Fact(
                labels.of("next-visit"),
                expectedKm()
                        .map(odometer ->
                                labels.of("day-and-odometer", "day", assessment.nextVisit(), "odometer", odometer))
                        .orElseGet(() -> labels.day(assessment.nextVisit()))));
        var changeOver = assessment.changeOver();
        if (changeOver != null) {
            facts.add(new Fact(labels.of("change-over"), reader.say(changeOver)));
        }
        return facts;
    }

    /** What the odometer may show by then, to the hundred; empty while the car has shown no distance of its own. */
    private Optional<Amount> expectedKm() {
        var history = assessment.history();
        if (history.visits().getFirst().id().equals(visit.id())) {
            return Optional.empty();
        }
        double km = visit.odometerKm()
                + RunHistory.kmPerDayAfter(history, visit)
                        * ChronoUnit.DAYS.between(visit.date(), assessment.nextVisit());
        double hundred = HUNDRED / reader.units().in(1, "km");
        return Optional.of(Amount.of(Math.round(km / hundred) * hundred, "km"));
    }

    /**
     * Work that the customer did not want.
     *
     * @param who said so, when, and who wrote it down
     */
    public record DeclinedLine(String words, String who) {}

    public List<DeclinedLine> declined() {
        return Declined.standing(notes.declined()).stream()
                .map(each -> new DeclinedLine(
                        line(each.sentence()),
                        labels.of(
                                "declined-by",
                                "who",
                                each.saidBy(),
                                "moment",
                                each.madeAt(),
                                "noted",
                                !each.person().isEmpty(),
                                "person",
                                each.person())))
                .toList();
    }

    /** What was agreed, by whom and how, and what was done without charge. */
    public Lines agreed() {
        return Lines.of(
                agreed.stream().map(reader::say).map(SheetText::line).toList(), Math.max(room.lines(), LEAST_LINES));
    }

    /** Whether the car was handed over. */
    public boolean gone() {
        return notes.lastDeparture().isPresent();
    }

    /** What the car left with open, with who let it go, why, and who was told; and what hands left open. */
    public List<String> leftOpen() {
        return Departure.leftOpen(notes.lastDeparture().orElse(null), visit, notes.ticks(), assessment.open(), reader)
                .stream()
                .map(reader::say)
                .map(SheetText::line)
                .toList();
    }

    public Lines work() {
        return Lines.of(
                assessment.workDone().stream()
                        // What a person typed stands as it was typed.
                        .map(each -> each instanceof Verbatim ? reader.say(each) : reader.begin(each))
                        .map(SheetText::line)
                        .toList(),
                room.lines());
    }

    public Lines otherSets() {
        return Lines.of(
                assessment.history().sets().stream()
                        .filter(set -> set.wheels().stream().noneMatch(wheel -> wheelAt.containsValue(wheel.tag())))
                        .map(this::otherSet)
                        .toList(),
                room.lines());
    }

    private String otherSet(WheelSet set) {
        var place = set.storePlace();
        return labels.of(
                "other-set",
                "set",
                reader.begin(new SetOf(set.season())),
                "place",
                place == null ? labels.of("no-place") : labels.of("lies-at", "place", name(place)),
                "lasts",
                assessment.forecasts().stream()
                        .filter(forecast -> forecast.set().id().equals(set.id()))
                        .findFirst()
                        .map(this::lasts)
                        .orElseGet(() -> labels.of("tread-not-judged")));
    }

    private String lasts(SetForecast forecast) {
        return labels.of(
                "lasts",
                "sure",
                forecast.probabilityHolds() >= forecast.confidence(),
                "from",
                forecast.from(),
                "until",
                forecast.until(),
                "chance",
                new Chance(forecast.probabilityHolds()));
    }

    /** What matters before driving and could not be judged; the rest stands with the record. */
    public List<String> notJudged() {
        return NotJudged.of(assessment).beforeDriving().stream()
                .limit(NOT_JUDGED_FIRST)
                .map(reader::begin)
                .map(SheetText::line)
                .toList();
    }

    /** Never cut: each of them keeps somebody from harm. */
    public Lines cautions() {
        var cautions = new ArrayList<String>();
        boolean unsafe = assessment
                .gravest()
                .filter(finding -> finding.verdict() == Verdict.UNSAFE)
                .isPresent();
        if (unsafe) {
            cautions.add(labels.of("do-not-drive", "unsafe", Verdict.UNSAFE));
        }
        if (assessment.retorque() != null) {
            cautions.add(labels.of("if-it-shakes"));
        }
        var opened = Release.brakesOpened(visit);
        // Nobody beds in the brakes of a car that is not to be driven, nor one that does not let go.
        if (!unsafe && !opened.isEmpty() && assessment.ofCar().stream().noneMatch(StuckBrake::isTold)) {
            cautions.add(burnish(assessment.history().vehicle(), opened));
        }
        if (!readings.all(Measure.PRESSURE_SET).isEmpty()) {
            cautions.add(labels.of("set-for-cold"));
        }
        cautions.add(labels.of("check-monthly"));
        var noted = visit.card().notes();
        if (noted != null && !noted.isBlank()) {
            cautions.add(labels.of("noted", "notes", line(noted)));
        }
        return Lines.of(cautions, cautions.size());
    }

    /**
     * Stops, speeds and pauses as planned from the car's data, or as the service literature for new friction material has them; feel,
     * and more distance on new parts: common practice, no source.
     */
    private String burnish(Vehicle vehicle, Set<Axle> opened) {
        return labels.of(
                "burnish",
                "driven",
                StandingTicks.of(notes.ticks())
                        .find(WorkTick.BURNISHED, null)
                        .filter(WorkTick::done)
                        .isPresent(),
                "speeds",
                BURNISH_SPEEDS,
                "stops",
                stops(vehicle, opened),
                "regenerates",
                vehicle.highVoltage(),
                "fresh",
                readings.all().stream()
                        .filter(reading -> reading.measure() == Measure.PADS_REPLACED
                                || reading.measure() == Measure.DISC_REPLACED)
                        .anyMatch(reading -> Math.round(reading.value()) == 1));
    }

    private String stops(Vehicle vehicle, Set<Axle> opened) {
        var planning = BurnishPlanning.of(vehicle, BURNISH_AIR_C);
        if (!planning.missing(opened).isEmpty()) {
            return labels.of("usual-stops");
        }
        var plans = opened.stream().map(axle -> planning.drive(axle, 0).plan()).toList();
        int stops = plans.stream().mapToInt(BurnishPlan::stops).max().orElseThrow();
        double apartS = plans.stream().mapToDouble(BurnishPlan::spacingS).max().orElseThrow();
        return labels.of("planned-stops", "n", stops, "apart", Amount.of(Math.ceil(apartS), "s"));
    }

    /** The pads and the disc of each corner that was read, when there is room for pictures. */
    public List<BrakeFigure> brakes() {
        return room.record().pictures()
                ? BrakeFigure.of(assessment, reader).stream()
                        .map(figure -> new BrakeFigure(
                                figure.corner(),
                                SheetTemplates.described(figure.pads()),
                                SheetTemplates.described(figure.disc())))
                        .toList()
                : List.of();
    }

    /** How likely a pad seizes; empty before a cleaning is in the book. */
    public String seizing() {
        return SheetTemplates.described(SeizingOverMonths.svg(assessment.seizing(), reader));
    }

    /** The 12 V battery over the visits; empty before there are two readings of it, and when there is no room for pictures. */
    public String battery() {
        return room.record().pictures()
                ? SheetTemplates.described(BatteryOverVisits.svg(assessment.battery(), reader))
                : "";
    }

    public PhotosSection photos() {
        return PhotosSection.of(notes.photosOnSheet(), reader);
    }

    /** What stands under the sheet: who worked on the car, or who entered what stands in it; nobody where neither is known. */
    public String signed() {
        var technician = visit.card().technician();
        if (technician != null) {
            return labels.of("technician-named", "name", name(technician));
        }
        var people = notes.people();
        return people.isEmpty()
                ? labels.of("technician")
                : labels.of("entered-by-named", "names", name(String.join(", ", people)));
    }

    public String customer() {
        return name(assessment.history().customer().name());
    }

    public String madeOn() {
        return labels.of("made-on", "moment", madeAt, "offset", reader.offset(madeAt));
    }

    public String corner(Corner corner) {
        return reader.say(corner);
    }
}
