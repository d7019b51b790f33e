package cornerbook.app.sheet;

import cornerbook.app.book.record.VisitNotes;
import cornerbook.core.assess.Advice;
import cornerbook.core.assess.Assessment;
import cornerbook.core.assess.NotJudged;
import cornerbook.core.car.Caution;
import cornerbook.core.car.JobCard;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.WorkStep;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Finding;
import cornerbook.core.say.Amount;
import cornerbook.core.tool.ShopTool;
import cornerbook.words.Labels;
import cornerbook.words.Reader;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What shows, years later, what was found, how it was left, with what, by whom and when. */
public final class RecordSection {
    private static final int STEPS_IN_ROW = 4;

    private final Assessment assessment;
    private final VisitNotes notes;
    private final StepTimes steps;
    private final FoundAndLeft read;
    private final SheetRoom room;
    private final Reader reader;
    private final Labels labels;

    RecordSection(
            Assessment assessment,
            VisitNotes notes,
            StandingReadings readings,
            Map<Corner, String> wheelAt,
            SheetRoom room,
            Reader reader) {
        this.assessment = assessment;
        this.notes = notes;
        this.room = room;
        this.reader = reader;
        this.labels = reader.labels(SheetPage.ROOM);
        var visit = assessment.visit();
        var visits = assessment.history().visits();
        this.steps = new StepTimes(visit, notes, reader);
        this.read = new FoundAndLeft(
                visits.stream().takeWhile(each -> !each.id().equals(visit.id())).toList(),
                visit,
                readings,
                wheelAt,
                reader);
    }

    public List<SheetPage.Fact> facts() {
        var vehicle = assessment.history().vehicle();
        var vin = vehicle.vin();
        var technician = assessment.visit().card().technician();
        var people = notes.people();
        return List.of(
                new SheetPage.Fact(labels.of("vin"), vin == null ? labels.of("not-recorded") : SheetText.name(vin)),
                new SheetPage.Fact(labels.of("plate"), SheetText.name(vehicle.plate())),
                new SheetPage.Fact(
                        labels.of("odometer"),
                        reader.say(Amount.of(assessment.visit().odometerKm(), "km"))),
                technician == null && !people.isEmpty()
                        ? new SheetPage.Fact(labels.of("entered-by"), SheetText.name(String.join(", ", people)))
                        : new SheetPage.Fact(
                                labels.of("technician"),
                                technician == null ? labels.of("not-recorded") : SheetText.name(technician)));
    }

    public SheetTable wheels() {
        return read.wheels(assessment.history());
    }

    public SheetTable brakes() {
        return read.brakes();
    }

    /** What was read beside the tables; where room is short, what was sound at a corner is left out. */
    public List<String> others() {
        return Stream.concat(read.ofCar().stream(), read.ofCorners(room.record().everything()).stream())
                .toList();
    }

    /** What was asked, and the tools by which it was set, each with the day from which it was not to be trusted. */
    public List<String> tools() {
        var lines = new ArrayList<String>();
        var vehicle = assessment.history().vehicle();
        var card = assessment.visit().card();
        var fastener = vehicle.fastener();
        if (fastener != null) {
            lines.add(torqueAsked(fastener.torqueNm(), card));
        }
        var frontKpa = vehicle.axle(Axle.FRONT).placardPressureKpa();
        var rearKpa = vehicle.axle(Axle.REAR).placardPressureKpa();
        if (frontKpa != null && rearKpa != null) {
            lines.add(labels.of(
                    "air-asked",
                    "front",
                    Amount.of(frontKpa, "kPa"),
                    "rear",
                    Amount.of(rearKpa, "kPa"),
                    "tool",
                    card.findTool(ShopTool.Kind.PRESSURE_GAUGE)
                            .map(gauge -> labels.of("gauge", "tool", tool(gauge), "due", gauge.calibrationDue()))
                            .orElseGet(() -> labels.of("no-gauge"))));
        }
        return lines;
    }

    private String torqueAsked(double torqueNm, JobCard card) {
        return labels.of(
                "torque-asked",
                "torque",
                Amount.of(torqueNm, "N·m"),
                "tool",
                card.findTool(ShopTool.Kind.TORQUE_WRENCH)
                        .map(wrench -> labels.of(
                                "wrench",
                                "tool",
                                tool(wrench),
                                "set",
                                Amount.of(torqueNm + wrench.offset(), "N·m"),
                                "due",
                                wrench.calibrationDue()))
                        .orElseGet(() -> labels.of("no-wrench")));
    }

    private static String tool(ShopTool tool) {
        return "%s, %s".formatted(tool.id(), SheetText.name(tool.name()));
    }

    /** Of each row of the table the steps that stand in it. */
    public List<List<StepTimes.Line>> steps() {
        var lines = steps.lines();
        return IntStream.range(0, Math.ceilDiv(lines.size(), STEPS_IN_ROW))
                .mapToObj(row -> lines.subList(row * STEPS_IN_ROW, Math.min(lines.size(), (row + 1) * STEPS_IN_ROW)))
                .toList();
    }

    public int stepsInRow() {
        return STEPS_IN_ROW;
    }

    /** Where the clock stood by which times are told: "UTC−05:00". */
    public String zone() {
        return labels.of(
                "times-are",
                "offset",
                reader.offset(notes.lastDeparture()
                        .map(departure -> departure.madeAt())
                        .orElseGet(() -> assessment.visit().date().atTime(12, 0).toInstant(ZoneOffset.UTC))));
    }

    /** What was shown where the hands were, each once, by step. */
    public List<SheetPage.Fact> cautions() {
        var said = new HashSet<Caution>();
        return steps.worked().stream()
                .map(step -> caution(
                        step,
                        Caution.at(step, assessment.history().vehicle()).stream()
                                .filter(said::add)
                                .toList()))
                .filter(fact -> !fact.value().isEmpty())
                .toList();
    }

    private SheetPage.Fact caution(WorkStep step, List<Caution> cautions) {
        return new SheetPage.Fact(
                reader.say(step), cautions.stream().map(reader::say).collect(Collectors.joining(" ")));
    }

    /** What the verdicts rest on, each law and house rule once. */
    public String sources() {
        return assessment.ofCar().stream()
                .filter(finding -> room.record().everything() || Advice.asks(finding))
                .map(Finding::source)
                .map(reader::say)
                .distinct()
                .collect(Collectors.joining(" · "));
    }

    /** What else could not be judged than the first page tells. */
    public Lines notJudged() {
        var notJudged = NotJudged.of(assessment);
        return Lines.of(
                Stream.concat(
                                notJudged.beforeDriving().stream().skip(SheetPage.NOT_JUDGED_FIRST),
                                notJudged.others().stream())
                        .map(reader::begin)
                        .map(SheetText::line)
                        .toList(),
                room.record().lines());
    }
}
