package cornerbook.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.demo.DemoShop;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.visit.Assessor;
import cornerbook.core.visit.CarHistory;
import cornerbook.core.visit.Knowledge;
import cornerbook.core.visit.Measure;
import cornerbook.core.visit.Reading;
import cornerbook.core.visit.Verdict;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class GravestFindingsTest {
    private Assessor assessor = new Assessor(LimitsFile.load());
    private final AtomicInteger judged = new AtomicInteger();
    private final GravestFindings gravest = new GravestFindings(() -> assessor, history -> {
        judged.incrementAndGet();
        return Optional.of(assessor.assess(history, history.visits().getLast().id()));
    });

    private static CarHistory car() {
        return DemoShop.histories(LocalDate.of(2026, 11, 25)).stream()
                .filter(history -> !history.visits().getLast().leftOn().isEmpty())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aCarThatIsReadAgainUnchangedIsNotJudgedAgain() {
        var first = gravest.of(car());
        assertThat(gravest.of(car())).isSameAs(first);
        assertThat(judged).hasValue(1);
    }

    @Test
    void aCarIsJudgedAgainWhenTheBookHasLearned() {
        gravest.of(car());
        assessor = assessor.with(Knowledge.learn(List.of(car()), LocalDate.of(2026, 11, 25)));
        gravest.of(car());
        assertThat(judged).hasValue(2);
    }

    @Test
    void oneReadingMoreIsJudgedAtOnce() {
        var car = car();
        gravest.of(car);
        var visit = car.visits().getLast();
        var loose = visit.readings().stream()
                .filter(reading -> reading.measure() == Measure.WHEEL_TORQUE)
                .findFirst()
                .orElseThrow();
        var readings = new ArrayList<>(visit.readings());
        readings.add(new Reading(
                "r-again",
                loose.measure(),
                loose.corner(),
                loose.wheelTag(),
                null,
                40,
                "40 N·m",
                loose.id(),
                "found loose"));
        var visits = new ArrayList<>(car.visits());
        visits.set(visits.size() - 1, visit.withReadings(readings));
        assertThat(gravest.of(new CarHistory(car.vehicle(), car.customer(), car.sets(), visits)))
                .hasFieldOrPropertyWithValue("verdict", Verdict.UNSAFE);
    }
}
