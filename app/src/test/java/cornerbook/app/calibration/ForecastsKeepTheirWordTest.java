package cornerbook.app.calibration;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.calibration.fleet.Scenario;
import cornerbook.app.limits.LimitsFile;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * On cars that live by themselves every figure has to be as it is asked to be ({@link Figure}), or no worse than what is
 * reached today, which stands in reached.csv until it is no longer needed.
 */
class ForecastsKeepTheirWordTest {
    private static final String REACHED = "/calibration/reached.csv";
    private static final int CARS_OF_THE_ENDS = 80;
    private static final int CARS_BETWEEN = 40;

    @Test
    void everyFigureIsAsAskedOrNoWorseThanReached() throws IOException {
        var reached = reached();
        var off = new TreeMap<String, String>();
        var faults = new ArrayList<String>();
        Arrays.stream(Scenario.values())
                .parallel()
                .map(scenario -> scored(scenario))
                .toList()
                .forEach(scored -> scored.forEach(figure -> {
                    if (figure.off()) {
                        off.put(figure.key(), figure.line());
                        var bound = reached.get(figure.key());
                        if (bound == null || figure.isWorseThan(bound)) {
                            faults.add("worse than %s: %s".formatted(bound == null ? "asked" : bound, figure.line()));
                        }
                    }
                }));
        reached.keySet().stream()
                .filter(key -> !off.containsKey(key))
                .forEach(key -> faults.add("as asked by now, take its line out: " + key));

        assertThat(faults)
                .as("today it would have to read%n%s", String.join("\n", off.values()))
                .isEmpty();
    }

    /** A figure of a scenario. */
    private record Scored(Scenario scenario, boolean learned, Figure figure, Measured measured) {
        Figure.Bounds asked() {
            return figure.asked(scenario == Scenario.CONTROL, learned);
        }

        boolean off() {
            return !asked().hold(measured);
        }

        private boolean tooHigh() {
            return measured.value() > asked().high();
        }

        boolean isWorseThan(double bound) {
            return tooHigh() ? measured.value() > bound : measured.value() < bound;
        }

        String key() {
            return "%s,%s,%s".formatted(scenario, learned ? "learned" : "default", figure);
        }

        /** As in the file: the next whole number outwards. */
        String line() {
            long outwards = (long) (tooHigh() ? Math.ceil(measured.value()) : Math.floor(measured.value()));
            return "%s,%s,%s to %s".formatted(key(), outwards, Math.round(asked().low()), Math.round(asked().high()));
        }
    }

    private static List<Scored> scored(Scenario scenario) {
        boolean end = scenario == Scenario.CONTROL || scenario == Scenario.ALL;
        var trial = CalibrationPage.trial(scenario, end ? CARS_OF_THE_ENDS : CARS_BETWEEN, LimitsFile.load());
        var all = new ArrayList<Scored>();
        for (boolean learned : new boolean[] {true, false}) {
            for (var figure : Figure.values()) {
                figure.of(trial.scores(learned))
                        .ifPresent(measured -> all.add(new Scored(scenario, learned, figure, measured)));
            }
        }
        return all;
    }

    private static Map<String, Double> reached() throws IOException {
        var bounds = new TreeMap<String, Double>();
        try (var stream = ForecastsKeepTheirWordTest.class.getResourceAsStream(REACHED)) {
            new String(Objects.requireNonNull(stream).readAllBytes(), UTF_8)
                    .lines()
                    .skip(1)
                    .forEach(line -> {
                        var cells = line.split(",", -1);
                        bounds.put(String.join(",", cells[0], cells[1], cells[2]), Double.valueOf(cells[3]));
                    });
        }
        return bounds;
    }
}
