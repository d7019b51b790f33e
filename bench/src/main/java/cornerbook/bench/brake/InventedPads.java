package cornerbook.bench.brake;

import cornerbook.core.brake.seizing.CensoredTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Invented pads, each looked at every four to eight months for six years: one row per pad, from known coefficients.
 *
 * @param covariates salt, garage, distance, friction
 */
record InventedPads(List<CensoredTime> times, List<List<Double>> covariates) {
    private static final double LAST_MONTH = 72;

    static InventedPads of(int pads, long seed) {
        var random = new Random(seed);
        var times = new ArrayList<CensoredTime>(pads);
        var covariates = new ArrayList<List<Double>>(pads);
        for (int i = 0; i < pads; i++) {
            double salt = random.nextDouble() - 0.4;
            double garage = random.nextDouble() < 0.4 ? 1 : 0;
            double distance = 0.6 * random.nextGaussian();
            double friction = random.nextDouble() - 0.5;
            double location = 4.1 - 0.8 * salt + 0.1 * garage + 0.05 * distance + 0.5 * friction;
            double month = Math.exp(location + 0.5 * Math.log(-Math.log(1 - random.nextDouble())));
            double between = 4 + 4 * random.nextDouble();
            double after = Math.floor(month / between) * between;
            times.add(
                    after + between > LAST_MONTH
                            ? CensoredTime.notBy(LAST_MONTH)
                            : CensoredTime.between(after, after + between));
            covariates.add(List.of(salt, garage, distance, friction));
        }
        return new InventedPads(times, covariates);
    }
}
