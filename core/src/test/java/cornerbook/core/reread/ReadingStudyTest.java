package cornerbook.core.reread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ReadingStudyTest {
    private static ReadTwice read(String first, String second, double... differencesMm) {
        var list = new ArrayList<Double>();
        for (double difference : differencesMm) {
            list.add(difference);
        }
        return new ReadTwice(first, second, list);
    }

    private static PersonReads person(ReadingStudy study, String name) {
        return study.persons().stream()
                .filter(each -> each.person().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void tooLittleSaysNothing() {
        assertThat(ReadingStudy.find(List.of())).isNull();
        assertThat(ReadingStudy.find(List.of(read("A", "B", 0.1, 0.2, 0.1)))).isNull();
        assertThat(ReadingStudy.find(List.of(read("A", "B", 0.1, 0.2, 0.1, 0.0))))
                .isNotNull();
    }

    /** One occasion has nothing to tell an offset's error from. */
    @Test
    void oneOccasionTellsNoOffset() {
        var study = Objects.requireNonNull(ReadingStudy.find(List.of(read("A", "B", 0.1, 0.2, 0.1, 0.0))));
        assertThat(person(study, "A").offset()).isNull();
        assertThat(study.occasionsMm()).isNull();
        assertThat(study.repeatabilityMm()).isPositive();
    }

    @Test
    void whoWasNeverComparedHasNoOffset() {
        var study = Objects.requireNonNull(ReadingStudy.find(List.of(
                read("A", "A", 0.1, 0.0, 0.1, 0.0),
                read("A", "A", 0.0, 0.0, 0.1, 0.0),
                read("B", "C", 0.4, 0.3, 0.4, 0.4),
                read("B", "C", 0.4, 0.3, 0.3, 0.4))));
        assertThat(person(study, "A").offset()).isNull();
        assertThat(person(study, "A").repeatabilityMm()).isPositive();
        assertThat(person(study, "B").repeatabilityMm()).isNull();
        assertThat(Objects.requireNonNull(person(study, "C").offset()).mm()).isCloseTo(0.3625, within(1e-9));
        assertThat(Objects.requireNonNull(person(study, "B").offset()).mm()).isCloseTo(-0.3625, within(1e-9));
    }

    /** Another wheel, or 5.1 for 6.1: no error of reading. */
    @Test
    void slipsAreLeftOutAndCounted() {
        var study = Objects.requireNonNull(
                ReadingStudy.find(List.of(read("A", "A", 0.1, 0.0, 0.1, 0.0, 1.1), read("A", "A", -3.0, -2.5))));
        assertThat(study.leftOut()).isEqualTo(3);
        assertThat(study.pairs()).isEqualTo(4);
        assertThat(study.occasions()).isEqualTo(1);
        assertThat(study.repeatabilityMm()).isLessThan(0.1);
    }

    @Test
    void anOffsetMattersWhereAllOfItIsBeyondThreeTenths() {
        assertThat(new PersonReads.Offset(0.41, 0.1).matters()).isTrue();
        assertThat(new PersonReads.Offset(-0.41, 0.1).matters()).isTrue();
        assertThat(new PersonReads.Offset(0.41, 0.12).matters()).isFalse();
        assertThat(new PersonReads.Offset(0.29, 0).matters()).isFalse();
    }

    /**
     * Invented shops of three persons with known errors: offsets lie within their limits in about 95 of 100, and both spreads are
     * found without a bias.
     */
    @Test
    void findsWhatWasPutIn() {
        var random = new Random(5725);
        var names = List.of("A", "B", "C");
        var truth = List.of(0.0, 0.3, -0.15);
        int shops = 300;
        int held = 0;
        double repeats = 0;
        double occasions = 0;
        for (int shop = 0; shop < shops; shop++) {
            var all = new ArrayList<ReadTwice>();
            for (int k = 0; k < 24; k++) {
                int first = random.nextInt(3);
                int second = random.nextInt(3);
                double shift = truth.get(second) - truth.get(first) + 0.08 * Math.sqrt(2) * random.nextGaussian();
                var differences = new ArrayList<Double>();
                for (int i = 0; i < 4 + 4 * random.nextInt(3); i++) {
                    differences.add(shift + 0.12 * Math.sqrt(2) * random.nextGaussian());
                }
                all.add(new ReadTwice(names.get(first), names.get(second), differences));
            }
            var study = Objects.requireNonNull(ReadingStudy.find(all));
            var offset = Objects.requireNonNull(person(study, "B").offset());
            double mine = truth.get(1) - (truth.get(0) + truth.get(2)) / 2;
            held += mine >= offset.lowMm() && mine <= offset.highMm() ? 1 : 0;
            repeats += study.repeatabilityMm() * study.repeatabilityMm();
            var between = Objects.requireNonNull(study.occasionsMm());
            occasions += between * between;
        }
        assertThat(held).isBetween((int) (0.91 * shops), (int) (0.985 * shops));
        assertThat(Math.sqrt(repeats / shops)).isCloseTo(0.12, within(0.005));
        assertThat(Math.sqrt(occasions / shops)).isCloseTo(0.08, within(0.01));
    }
}
