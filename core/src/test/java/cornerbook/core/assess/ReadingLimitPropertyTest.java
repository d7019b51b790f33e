package cornerbook.core.assess;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.car.Cars;
import cornerbook.core.car.JobCard;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.ReadingLimit;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.tool.ShopTool;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/**
 * What is told of a value while the gauge is in the hand, by limits that are older than the value, is what the judges find when
 * they have it: on a fine grid with every limit on it, and on values of any digits.
 */
class ReadingLimitPropertyTest {
    private static final Assessor ASSESSOR = new Assessor(Cars.LIMITS);
    private static final SplittableRandom RANDOM = new SplittableRandom(1);

    /** 140 N·m are asked: 133 and 154 still count. */
    @Test
    void aTorqueIsToldAsItIsJudged() {
        values(100, 200, 0.25).forEach(torqueNm -> {
            var read = Cars.reading(Measure.WHEEL_TORQUE, Corner.LF, "S-LF", null, torqueNm);
            assertThat(told(List.of(), read))
                    .as("%s N·m", torqueNm)
                    .isEqualTo(found(Subject.Part.WHEEL_TORQUE, List.of(read)))
                    .isEqualTo(torqueNm < 133 ? Verdict.UNSAFE : torqueNm > 154 ? Verdict.SPENT : Verdict.HOLDS);
        });
    }

    /** Warm tyres are set higher than the placard, and the gauge shows 3 kPa too much. */
    @Test
    void aPressureIsToldAsItIsJudged() {
        var temperatures = List.of(
                Cars.reading(Measure.TYRE_TEMPERATURE, null, null, null, 20),
                Cars.reading(Measure.OUTSIDE_TEMPERATURE, null, null, null, -5));
        values(220, 320, 0.5).forEach(pressureKpa -> {
            var read = Cars.reading(Measure.PRESSURE_SET, Corner.LF, "S-LF", null, pressureKpa);
            assertThat(told(temperatures, read))
                    .as("%s kPa", pressureKpa)
                    .isEqualTo(found(Subject.Part.PRESSURE, and(temperatures, read)));
        });
    }

    /** The law asks 1.6 mm, the car 3 mm. */
    @Test
    void aPadIsToldAsItIsJudged() {
        for (var edge : List.of(Measure.PAD_THICKNESS, Measure.PAD_THICKNESS_TRAILING)) {
            values(0, 6, 0.05).forEach(thicknessMm -> {
                var read = Cars.reading(edge, Corner.LF, null, Spot.INNER, thicknessMm);
                var others = List.of(Cars.reading(Measure.PAD_THICKNESS, Corner.LF, null, Spot.OUTER, 6));
                agree(told(others, read), found(Subject.Part.PAD, and(others, read)), thicknessMm);
                assertThat(told(others, read) == Verdict.UNSAFE).isEqualTo(thicknessMm < 1.6);
                assertThat(told(others, read) == Verdict.HOLDS).isEqualTo(thicknessMm >= 3);
            });
        }
    }

    /** The car asks 26 mm. */
    @Test
    void aDiscIsToldAsItIsJudged() {
        values(24, 28, 0.01).forEach(thicknessMm -> {
            var read = Cars.reading(Measure.DISC_THICKNESS, Corner.LF, null, null, thicknessMm);
            agree(told(List.of(), read), found(Subject.Part.DISC, List.of(read)), thicknessMm);
            assertThat(told(List.of(), read) == Verdict.SPENT).isEqualTo(thicknessMm < 26);
        });
    }

    /** The law asks 1.6 mm, the summer 3 mm. */
    @Test
    void aTreadIsToldAsItIsJudged() {
        values(0, 8, 0.1).forEach(depthMm -> {
            var others = new ArrayList<Reading>();
            for (var corner : Corner.values()) {
                for (var spot : Spot.values()) {
                    others.add(Cars.reading(Measure.TREAD_DEPTH, corner, "S-" + corner, spot, 8));
                }
            }
            var read = Cars.reading(Measure.TREAD_DEPTH, Corner.LF, "S-LF", Spot.INNER, depthMm);
            others.removeIf(other -> other.corner() == Corner.LF && other.spot() == Spot.INNER);
            agree(told(others, read), found(Subject.Part.WHEEL_SET, and(others, read)), depthMm);
            assertThat(told(others, read) == Verdict.UNSAFE).isEqualTo(depthMm < 1.6);
            assertThat(told(others, read) == Verdict.HOLDS).isEqualTo(depthMm >= 3);
        });
    }

    /** What will not last is found later, too; that no gauge shows. */
    private static void agree(Verdict told, Verdict found, double value) {
        if (told == Verdict.HOLDS) {
            assertThat(found).as("%s mm", value).isNotEqualTo(Verdict.UNSAFE);
        } else {
            assertThat(found).as("%s mm", value).isEqualTo(told);
        }
    }

    /** By the limits that the visit had before it was read. */
    private static Verdict told(List<Reading> before, Reading read) {
        var visit = visit(before);
        var limits = ASSESSOR.limits(Cars.history(visit), visit.id()).stream()
                .filter(limit -> limit.measure() == read.measure())
                .filter(limit -> Optional.ofNullable(limit.subject().corner())
                        .map(corner -> corner == read.corner())
                        .orElse(true))
                .filter(limit -> Optional.ofNullable(limit.subject().wheelTag())
                        .map(tag -> tag.equals(read.wheelTag()))
                        .orElse(true))
                .toList();
        assertThat(limits).as(read.measure().name()).isNotEmpty();
        return ReadingLimit.broken(limits, read.value())
                .map(ReadingLimit::outside)
                .orElse(Verdict.HOLDS);
    }

    private static Verdict found(Subject.Part part, List<Reading> readings) {
        var visit = visit(readings);
        return ASSESSOR.findings(Cars.history(visit), visit.id()).stream()
                .filter(finding -> finding.subject().part() == part)
                .map(Finding::verdict)
                .max(Verdict::compareTo)
                .orElse(Verdict.HOLDS);
    }

    /** Worked with a gauge that shows 3 kPa too much. */
    private static Visit visit(List<Reading> readings) {
        var gauge = new ShopTool(
                "G-1", ShopTool.Kind.PRESSURE_GAUGE, "Invented gauge", 0, 700, 3, Cars.AUTUMN.plusYears(1));
        return new Visit(
                "v",
                Cars.AUTUMN,
                48_000,
                Cars.at("S-"),
                Cars.at("S-"),
                readings,
                new JobCard("Ida", List.of(), null, null, List.of(gauge)),
                Set.of());
    }

    private static DoubleStream values(double from, double to, double step) {
        return DoubleStream.concat(
                DoubleStream.iterate(from, value -> value <= to, value -> value + step)
                        .map(value -> Math.round(value * 1000) / 1000.0),
                RANDOM.doubles(50, from, to));
    }

    private static List<Reading> and(List<Reading> readings, Reading read) {
        var all = new ArrayList<>(readings);
        all.add(read);
        return all;
    }
}
