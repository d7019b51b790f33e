package cornerbook.app.desk.today;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.car.VehicleSummary;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.assess.Assessor;
import cornerbook.core.assess.Learner;
import cornerbook.core.car.CarHistory;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class GravestFindingsTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final CarHistory CAR = DemoShop.histories(TODAY).getFirst();

    private Assessor assessor = new Assessor(LimitsFile.load());
    private final AtomicInteger judged = new AtomicInteger();
    private final GravestFindings gravest = new GravestFindings(() -> assessor, id -> {
        judged.incrementAndGet();
        return assessor.findings(CAR, CAR.visits().getLast().id());
    });

    private static VehicleSummary summary(long revision) {
        var vehicle = CAR.vehicle();
        return new VehicleSummary(
                vehicle.id(), vehicle.name(), vehicle.plate(), CAR.customer().name(), TODAY, revision);
    }

    @Test
    void aCarThatIsListedAgainUnchangedIsNotJudgedAgain() {
        var first = gravest.of(summary(3));
        assertThat(first).isNotNull();
        assertThat(gravest.of(summary(3))).isSameAs(first);
        assertThat(judged).hasValue(1);
    }

    @Test
    void aCarIsJudgedAgainWhenItsHistoryHasChanged() {
        gravest.of(summary(3));
        gravest.of(summary(4));
        assertThat(judged).hasValue(2);
    }

    @Test
    void aCarIsJudgedAgainWhenTheBookHasLearned() {
        gravest.of(summary(3));
        assessor = assessor.with(Learner.learn(List.of(CAR), TODAY));
        gravest.of(summary(3));
        assertThat(judged).hasValue(2);
    }
}
