package cornerbook.core.tool.judge;

import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.season.Dates;
import cornerbook.core.tool.ShopTool;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Findings on the tools that a visit was worked with: whether they may be trusted on the day, and whether what was read lies
 * on their scale. A visit that names no tool gives none.
 */
public final class ToolFindings {
    private ToolFindings() {}

    public static List<Finding> of(Visit visit, StandingReadings readings) {
        var findings = new ArrayList<Finding>();
        for (var tool : visit.tools()) {
            findings.add(calibration(tool, visit));
            for (var measure : read(tool.kind())) {
                readings.all(measure).stream()
                        .filter(reading -> !tool.reaches(reading.value()))
                        .forEach(reading -> findings.add(offTheScale(tool, reading)));
            }
        }
        return findings;
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
        var what = check(tool.kind());
        var evidence = new ArrayList<Evidence>(List.of(
                new Evidence("next %s".formatted(what), Dates.written(tool.calibrationDue()), "as the shop keeps it"),
                new Evidence("used", Dates.written(visit.date()), "day of the visit")));
        if (tool.offset() != 0) {
            evidence.add(offset(tool));
        }
        return finding(
                null,
                due ? Verdict.SPENT : Verdict.HOLDS,
                due
                        ? "%s %s, %s: %s was due on %s"
                                .formatted(
                                        tool.kind().title(),
                                        tool.id(),
                                        tool.name(),
                                        what,
                                        Dates.written(tool.calibrationDue()))
                        : "%s %s, %s: %s is not due before %s"
                                .formatted(
                                        tool.kind().title(),
                                        tool.id(),
                                        tool.name(),
                                        what,
                                        Dates.written(tool.calibrationDue())),
                due
                        ? "A tool of the shop was past its %s; what was done with it is to be checked with another one."
                                .formatted(what)
                        : "The tools that were used are within their time.",
                evidence,
                source(tool.kind()));
    }

    private static Evidence offset(ShopTool tool) {
        return new Evidence(
                "shows too much",
                "%.1f %s".formatted(tool.offset(), tool.kind().unit()).replace('-', '−'),
                tool.kind() == ShopTool.Kind.PRESSURE_GAUGE
                        ? "against a master; taken off each pressure"
                        : "against a master; to be added to what is asked before it is set, the torque stands as it was read");
    }

    private static Finding offTheScale(ShopTool tool, Reading reading) {
        var unit = tool.kind().unit();
        return finding(
                reading,
                Verdict.SPENT,
                "%s %.0f %s is not on the scale of %s %s, %.0f to %.0f %s"
                        .formatted(
                                reading.corner(),
                                reading.value(),
                                unit,
                                tool.kind().title().toLowerCase(Locale.ROOT),
                                tool.id(),
                                tool.lowest(),
                                tool.highest(),
                                unit),
                "What was read at %s cannot have been measured with that tool; it is to be done again."
                        .formatted(reading.corner()),
                List.of(
                        new Evidence("read", "%.0f %s".formatted(reading.value(), unit), Evidence.howRead(reading)),
                        new Evidence(
                                "scale of %s".formatted(tool.id()),
                                "%.0f to %.0f %s".formatted(tool.lowest(), tool.highest(), unit),
                                "as the shop keeps it")),
                tool.kind() == ShopTool.Kind.TORQUE_WRENCH
                        ? "ISO 6789-1:2017: a wrench measures from the lowest value marked on it (trade literature)"
                        : "a gauge measures on its scale only: common practice, no source");
    }

    private static Finding finding(
            @Nullable Reading reading,
            Verdict verdict,
            String title,
            String plainWords,
            List<Evidence> evidence,
            String source) {
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
                source);
    }

    private static String check(ShopTool.Kind kind) {
        return kind == ShopTool.Kind.HOIST ? "inspection" : "calibration";
    }

    private static String source(ShopTool.Kind kind) {
        return switch (kind) {
            case TORQUE_WRENCH ->
                "ISO 6789-1:2017: 12 months or 5000 cycles unless the shop has a rule of its own (from memory; ISO 6789:2003 quoted alike by a maker of wrenches)";
            case PRESSURE_GAUGE -> "a gauge is compared with a master every 12 months: common practice, no source";
            case HOIST ->
                "ANSI/ALI ALOIM:2020: inspected at least every year by a qualified inspector (trade literature)";
        };
    }
}
