package cornerbook.app.picture.brake;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.demo.DemoShop;
import cornerbook.core.brake.DrumBrake;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.say.Amount;
import cornerbook.words.Reader;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The pads of a corner over the visits, on cars of the invented shop. */
class PadsOverVisitsTest {
    private static final List<CarHistory> CARS = DemoShop.histories(LocalDate.of(2026, 11, 25));

    @Test
    void everyStandingReadingHasItsMarkAndTheLastIsTold() {
        var car = CARS.stream()
                .filter(history -> history.vehicle().id().equals("demo-08"))
                .findFirst()
                .orElseThrow();
        var read = car.visits().stream()
                .map(StandingReadings::new)
                .flatMap(readings -> readings.all(Measure.PAD_THICKNESS).stream())
                .filter(reading -> reading.corner() == Corner.LF)
                .toList();
        var svg = PadsOverVisits.svg(car, Corner.LF, Reader.DEFAULT);
        assertThat(svg.split("<circle", -1)).as("and two in the key").hasSize(1 + read.size() + 2);
        var lastInner = read.stream()
                .filter(reading -> reading.spot() == Spot.INNER)
                .reduce((one, other) -> other)
                .orElseThrow();
        assertThat(svg).contains(Reader.DEFAULT.say(new Amount(lastInner.value(), "mm", 1)));
    }

    @Test
    void aBrakeWithoutPadsHasNoPicture() {
        assertThat(CARS.stream()
                        .filter(car ->
                                car.vehicle().axle(Corner.LR.axle()).brake().friction() instanceof DrumBrake))
                .isNotEmpty()
                .allSatisfy(car -> assertThat(PadsOverVisits.svg(car, Corner.LR, Reader.DEFAULT))
                        .isEmpty());
    }
}
