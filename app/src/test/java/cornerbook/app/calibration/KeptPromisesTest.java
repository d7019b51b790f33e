package cornerbook.app.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.app.demo.DemoShop;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.assess.Assessor;
import java.time.LocalDate;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Cars that are scored one by one and summed, beside the scores that the page on calibration has of the same cars together. */
class KeptPromisesTest {
    @Test
    void carsScoredAloneGiveTheFiguresOfThePage() {
        var cars = DemoShop.histories(LocalDate.of(2026, 11, 30), 0, 40).toList();
        var assessor = new Assessor(LimitsFile.load());
        var together = new ForecastScores();
        cars.forEach(car -> together.add(assessor, car, new LaterVisits(car)));
        var expected = KeptPromises.of(together);
        var kept = KeptPromises.of(cars.stream().map(car -> KeptPromises.ofCar(assessor, car)));
        assertThat(kept).hasSameSizeAs(Figure.values());
        assertThat(kept.stream().filter(each -> each.value() != null)).hasSizeGreaterThan(4);
        for (int place = 0; place < kept.size(); place++) {
            assertThat(kept.get(place).name()).isEqualTo(expected.get(place).name());
            assertThat(kept.get(place).value() == null)
                    .isEqualTo(expected.get(place).value() == null);
            if (kept.get(place).value() != null) {
                assertThat(kept.get(place).value())
                        .isCloseTo(Objects.requireNonNull(expected.get(place).value()), within(1e-9));
                assertThat(kept.get(place).standardError())
                        .isCloseTo(Objects.requireNonNull(expected.get(place).standardError()), within(1e-9));
            }
        }
    }
}
