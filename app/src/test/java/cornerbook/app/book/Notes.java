package cornerbook.app.book;

import cornerbook.app.book.bay.Departure;
import cornerbook.app.book.bay.ReadingAuthor;
import cornerbook.app.book.bay.RivalAnswer;
import cornerbook.app.book.bay.RivalReading;
import cornerbook.app.book.car.WheelChange;
import cornerbook.app.book.photo.KeptPhoto;
import cornerbook.app.book.photo.Photo;
import cornerbook.app.book.record.CarRecord;
import cornerbook.app.book.record.VisitNotes;
import cornerbook.app.book.visit.VisitChange;
import cornerbook.app.book.work.Declined;
import cornerbook.app.book.work.Remark;
import cornerbook.app.book.work.WorkTick;
import cornerbook.app.photo.Photos;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Subject;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Random;
import java.util.UUID;

/** Invented notes of visits, chosen at random from a seed. */
public final class Notes {
    private final Random random;

    public Notes(long seed) {
        random = new Random(seed);
    }

    /** Every visit of a car gets some. */
    public CarRecord ofCar(CarHistory history) {
        var notes = new HashMap<String, VisitNotes>();
        history.visits().forEach(visit -> notes.put(visit.id(), ofVisit(visit)));
        return new CarRecord(history, notes, changes(history), visitChanges(history));
    }

    private List<VisitChange> visitChanges(CarHistory history) {
        return history.visits().stream()
                .filter(visit -> random.nextBoolean())
                .map(visit -> new VisitChange(
                        visit.id(),
                        "odometer",
                        "382000 km",
                        "38200.5 km",
                        "A digit too many, \"冬\"",
                        random.nextBoolean() ? "Ada" : null,
                        LocalDate.of(2026, 11, 1 + random.nextInt(25))))
                .toList();
    }

    private List<WheelChange> changes(CarHistory history) {
        return history.sets().stream()
                .flatMap(set -> set.wheels().stream())
                .filter(wheel -> random.nextBoolean())
                .map(wheel -> new WheelChange(
                        wheel.tag(),
                        "TIN",
                        random.nextBoolean() ? null : "2 冬 \"old\"",
                        wheel.tyre().tin(),
                        LocalDate.of(2026, 11, 1 + random.nextInt(25))))
                .toList();
    }

    /** The same, at one visit. */
    public VisitNotes ofVisit(Visit visit) {
        var ticks = new ArrayList<WorkTick>();
        for (int i = random.nextInt(4); i >= 0; i--) {
            ticks.add(tick(i));
        }
        var corrected = visit.readings().stream().map(Reading::corrects).toList();
        var rivals = new ArrayList<RivalReading>();
        var answers = new ArrayList<RivalAnswer>();
        visit.readings().stream()
                .filter(reading -> !corrected.contains(reading.id()))
                .limit(random.nextInt(4))
                .forEach(reading -> {
                    var id = id();
                    rivals.add(new RivalReading(secondOf(reading, id), reading.id(), person(), at(-rivals.size())));
                    if (random.nextBoolean()) {
                        var kind = RivalAnswer.Kind.values()[random.nextInt(3)];
                        answers.add(new RivalAnswer(random.nextBoolean() ? null : id(), id, kind, person(), at(-9)));
                    }
                });
        var reasons = random.nextBoolean()
                ? List.<Departure.Reason>of()
                : List.of(new Departure.Reason("PEDAL", "The pedal is not pumped.", "Towed \"as it is\" \\ 冬"));
        return new VisitNotes(
                ticks,
                rivals,
                answers,
                List.of(new Departure(id(), person(), at(0), reasons, random.nextBoolean() ? "Mme Ardent" : null)),
                photos(),
                authors(visit),
                remarks(),
                declined());
    }

    /** Of one advice several, out of the order of the clocks. */
    private List<Declined> declined() {
        var declined = new ArrayList<Declined>();
        for (int i = random.nextInt(4); i >= 0; i--) {
            declined.add(new Declined(
                    id(),
                    "PAD.LF." + random.nextInt(2),
                    "Replace the \"pads\" 冬",
                    random.nextBoolean(),
                    "Mme Ardent",
                    random.nextBoolean() ? "" : person(),
                    at(random.nextInt(5))));
        }
        return declined;
    }

    /** Out of the order of the clocks. */
    private WorkTick tick(int place) {
        boolean ofWheel = random.nextBoolean();
        boolean done = random.nextBoolean();
        return new WorkTick(
                id(),
                ofWheel ? "FASTENER.LF." + place : "SECOND_CHECK",
                ofWheel ? "W-%d".formatted(place) : null,
                new WorkTick.Answer(done, done || random.nextBoolean() ? null : "NO_TIME"),
                !done || random.nextBoolean(),
                ofWheel ? List.of() : List.of(new UUID(0, place).toString(), new UUID(1, place).toString()),
                person(),
                at(random.nextInt(5)));
    }

    /** Of one topic several, out of the order of the clocks. */
    private List<Remark> remarks() {
        var remarks = new ArrayList<Remark>();
        for (int i = random.nextInt(4); i >= 0; i--) {
            var topic = Remark.Topic.values()[random.nextInt(3)];
            remarks.add(new Remark(id(), topic, "Pulls to the left, \"冬\" " + i, person(), at(random.nextInt(5))));
        }
        return remarks;
    }

    private List<ReadingAuthor> authors(Visit visit) {
        var authors = new ArrayList<ReadingAuthor>();
        visit.readings().stream()
                .filter(reading -> random.nextBoolean())
                .forEach(reading -> authors.add(new ReadingAuthor(reading.id(), person(), at(-authors.size()))));
        return authors;
    }

    private List<KeptPhoto> photos() {
        var photos = new ArrayList<KeptPhoto>();
        for (int i = random.nextInt(3); i >= 0; i--) {
            boolean ofCorner = random.nextBoolean();
            photos.add(new KeptPhoto(
                    new Photo(
                            id(),
                            ofCorner ? Corner.values()[random.nextInt(4)] : null,
                            ofCorner ? Subject.Part.DISC : null,
                            person(),
                            at(i),
                            random.nextBoolean()),
                    Photos.patches(random.nextInt(), 60, 40)));
        }
        return photos;
    }

    private static Reading secondOf(Reading reading, String id) {
        return new Reading(
                id,
                reading.measure(),
                reading.corner(),
                reading.wheelTag(),
                reading.spot(),
                reading.value(),
                reading.asWritten(),
                null,
                null);
    }

    private String id() {
        return new UUID(random.nextLong(), random.nextLong()).toString();
    }

    private String person() {
        return List.of("Ada", "Bo Ødegård", "冬 & Sons").get(random.nextInt(3));
    }

    /** Earlier for a larger step, so that a list whose steps count down is in the order of time. */
    private static Instant at(int step) {
        return Instant.parse("2026-11-25T10:00:00.123Z").minus(Duration.ofMinutes(step));
    }
}
