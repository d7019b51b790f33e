package cornerbook.app.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.demo.DemoShop;
import cornerbook.app.limits.LimitsFile;
import cornerbook.words.Language;
import cornerbook.words.Reader;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class CalibrationPageTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    @Test
    void thePageShowsEveryScenarioAndTheBook() {
        var files =
                CalibrationPage.files(10, DemoShop.histories(TODAY), LimitsFile.load(), DemoShop.NAME, Reader.DEFAULT);

        assertThat(files).containsKeys("calibration.md", "calibration-control.svg", "calibration-all.svg");
        assertThat(files.get("calibration.md"))
                .contains("## What is off", "| All at once, learned |", "| " + DemoShop.NAME + ", by default |");
    }

    @Test
    void whatIsOffIsSaidInWords() {
        var scores = new ForecastScores();
        for (int car = 0; car < 1000; car++) {
            scores.holds.add(0.35, car % 100 < 58);
            scores.holds.endCar();
            scores.bands.add(car % 100 < 62);
            scores.bands.endCar();
            scores.holdsFailed.add(car % 100 < 2);
            scores.holdsFailed.endCar();
        }
        var off = WhatIsOff.of(scores, true, true);

        assertThat(off)
                .extracting(said -> Reader.DEFAULT.say(said))
                .containsExactly(
                        "62\u00a0% of the readings of tread lie in the band that should hold nine in ten: bands are too narrow.",
                        "P is up to 23 points too low between 0.3 and 0.4: tyres are condemned early.");
        assertThat(off)
                .extracting(said -> Reader.DEFAULT.in(Language.FRENCH).say(said))
                .anyMatch(sentence -> sentence.contains("des pneus sont condamnés trop tôt"));
    }

    @Test
    void aFewCarsOutsideAreNoProof() {
        var scores = new ForecastScores();
        for (int car = 0; car < 40; car++) {
            scores.bands.add(car % 10 < 8);
            scores.bands.endCar();
        }

        assertThat(WhatIsOff.of(scores, false, true)).isEmpty();
    }
}
