package cornerbook.core.tool.judge;

import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Judgement;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Day;
import cornerbook.core.tool.ShopTool;
import cornerbook.core.tool.ToolSaid;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Findings on the tools that a visit was worked with: whether they may be trusted on the day, and whether what was read lies
 * on their scale. A visit that names no tool gives none.
 */
public final class ToolFindings {
    private ToolFindings() {}

    public static Judgement judge(Case given) {
        var visit = given.visit();
        var findings = new ArrayList<Finding>();
        for (var tool : visit.card().tools()) {
            findings.add(calibration(tool, visit));
            for (var measure : read(tool.kind())) {
                given.readings().all(measure).stream()
                        .filter(reading -> !tool.reaches(reading.value()))
                        .forEach(reading -> findings.add(offTheScale(tool, reading)));
            }
        }
        return Judgement.of(findings);
    }

    /** The kind of tool that a measure is read with; empty where the shop keeps none of it. */
    public static Optional<ShopTool.Kind> findKind(Measure measure) {
        return Arrays.stream(ShopTool.Kind.values())
                .filter(kind -> read(kind).contains(measure))
                .findFirst();
    }

    private static List<Measure> read(ShopTool.Kind kind) {
        return switch (kind) {
            case TORQUE_WRENCH -> List.of(Measure.WHEEL_TORQUE);
            case PRESSURE_GAUGE -> List.of(Measure.PRESSURE_FOUND, Measure.PRESSURE_SET);
            case HOIST -> List.of();
        };
    }

    private static Finding calibration(ShopTool tool, Visit visit) {
        boolean due = tool.due(visit.date());
        var kind = tool.kind();
        var evidence = new ArrayList<Evidence>(List.of(
                new Evidence(
                        new ToolSaid.NextCheck(kind),
                        new Day(tool.calibrationDue()),
                        ToolSaid.ToolEvidence.AS_THE_SHOP_KEEPS_IT),
                new Evidence(
                        ToolSaid.ToolEvidence.USED, new Day(visit.date()), ToolSaid.ToolEvidence.DAY_OF_THE_VISIT)));
        if (tool.offset() != 0) {
            evidence.add(new Evidence(
                    ToolSaid.ToolEvidence.SHOWS_TOO_MUCH,
                    new Amount(tool.offset(), kind.unit(), 1),
                    new ToolSaid.AgainstAMaster(kind)));
        }
        return finding(
                null,
                due ? Verdict.SPENT : Verdict.HOLDS,
                due
                        ? new ToolSaid.WasDue(kind, tool.id(), tool.name(), tool.calibrationDue())
                        : new ToolSaid.NotDueBefore(kind, tool.id(), tool.name(), tool.calibrationDue()),
                due ? new ToolSaid.PastItsTime(kind) : new ToolSaid.WithinTheirTime(),
                evidence,
                switch (kind) {
                    case TORQUE_WRENCH -> ToolSaid.ToolSource.WRENCH_CALIBRATION;
                    case PRESSURE_GAUGE -> ToolSaid.ToolSource.GAUGE_CALIBRATION;
                    case HOIST -> ToolSaid.ToolSource.HOIST_INSPECTION;
                });
    }

    private static Finding offTheScale(ShopTool tool, Reading reading) {
        var kind = tool.kind();
        var corner = Objects.requireNonNull(reading.corner());
        var value = new Amount(reading.value(), kind.unit(), 0);
        var scale = new Between(tool.lowest(), tool.highest(), kind.unit(), 0);
        return finding(
                reading,
                Verdict.SPENT,
                new ToolSaid.OffTheScale(corner, value, kind, tool.id(), scale),
                new ToolSaid.ToBeDoneAgain(corner),
                List.of(
                        new Evidence(ToolSaid.ToolEvidence.READ, value, Evidence.howRead(reading)),
                        new Evidence(
                                new ToolSaid.ScaleOf(tool.id()), scale, ToolSaid.ToolEvidence.AS_THE_SHOP_KEEPS_IT)),
                kind == ShopTool.Kind.TORQUE_WRENCH
                        ? ToolSaid.ToolSource.WRENCH_SCALE
                        : ToolSaid.ToolSource.GAUGE_SCALE);
    }

    private static Finding finding(
            @Nullable Reading reading,
            Verdict verdict,
            ToolSaid title,
            ToolSaid plainWords,
            List<Evidence> evidence,
            ToolSaid source) {
        return new Finding(
                        new Subject(
                                Subject.Part.SHOP_TOOL,
                                reading == null ? null : reading.corner(),
                                reading == null ? null : reading.wheelTag(),
                                null),
                        verdict,
                        title,
                        plainWords,
                        null,
                        null,
                        verdict == Verdict.HOLDS ? 1 : 0,
                        evidence,
                        source)
                .todo(reading == null ? Todo.Action.CHECK_TOOL : Todo.Action.MEASURE_AGAIN);
    }
}
