package cornerbook.core.brake.seizing;

import cornerbook.core.reference.ReferenceLines;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Data sets and results that survival.R wrote. */
record SurvivalReference(List<CensoredTime> times, List<List<Double>> covariates, Map<String, Double> results) {
    /** The data set and what R found for it. */
    static SurvivalReference of(String set) {
        var times = new ArrayList<CensoredTime>();
        var covariates = new ArrayList<List<Double>>();
        for (var row : rows("survival-data.csv", set)) {
            times.add(new CensoredTime(
                    Double.parseDouble(row.get(1)),
                    row.get(2).equals("Inf") ? Double.POSITIVE_INFINITY : Double.parseDouble(row.get(2))));
            covariates.add(row.subList(3, row.size()).stream()
                    .filter(cell -> !cell.isEmpty())
                    .map(Double::valueOf)
                    .toList());
        }
        return new SurvivalReference(times, covariates, resultsOf(set));
    }

    static Map<String, Double> resultsOf(String set) {
        var results = new LinkedHashMap<String, Double>();
        rows("survival.csv", set).forEach(row -> results.put(row.get(1), Double.valueOf(row.get(2))));
        return results;
    }

    double get(String what) {
        return Objects.requireNonNull(results.get(what), what);
    }

    private static List<List<String>> rows(String file, String set) {
        return ReferenceLines.of("brake/" + file).stream()
                .map(line -> Arrays.asList(line.split(",", -1)))
                .filter(row -> row.getFirst().equals(set))
                .toList();
    }
}
