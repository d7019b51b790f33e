package cornerbook.app.knowledge;

import cornerbook.app.limits.JudgeCode;
import cornerbook.app.text.PlainText;
import cornerbook.core.brake.seizing.LearnedSeizing;
import cornerbook.core.brake.seizing.WeibullFit;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.finding.Knowledge;
import cornerbook.core.numeric.CholeskyFactor;
import cornerbook.core.say.Refused;
import cornerbook.core.season.DistancePrior;
import cornerbook.core.tread.LearnedWear;
import cornerbook.core.tread.WearKnowledge;
import cornerbook.core.tread.WearParameter;
import cornerbook.core.tread.WearParameters;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** The numbers of a knowledge file as JSON (RFC 8259), and back to the same numbers bit for bit. */
final class KnowledgeForm {
    /** What fewer cars taught is left out: who knows one of them would know it. Common practice, no source. */
    static final int FEWEST_CARS = 5;

    private static final String PROGRAM = "0.1.0";
    private static final int SHOWN_OF_DIGEST = 8;
    private static final int LONGEST_NAME = 200;
    private static final int LONGEST_RELEASE = 40;
    private static final int MOST_CARS = 2_000_000_000;
    private static final long MOST_VISITS = 2_000_000_000_000L;
    private static final double MOST_WIDENING = 3;
    /** Of a logarithm: by more, something would be known to no power of ten. */
    private static final double MOST_ERROR = 3;

    private static final double MOST_COEFFICIENT = 50;
    private static final double LEAST_SCALE = 0.01;
    private static final double MOST_SCALE = 20;
    private static final double MOST_KM = 2000;
    private static final double ROUNDING = 1e-9;

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(SerializationFeature.INDENT_OUTPUT)
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private KnowledgeForm() {}

    /** The program that learns, with what its judges' code begins with. */
    static String thisRelease() {
        return PROGRAM + "+" + JudgeCode.digest().substring(0, SHOWN_OF_DIGEST);
    }

    static String write(KnowledgeFile file) {
        var knowledge = file.knowledge();
        var extent = file.extent();
        var tread = knowledge.wear().rows().stream()
                .filter(row -> row.learned().cars() >= FEWEST_CARS)
                .map(KnowledgeForm::row)
                .toList();
        var distance = knowledge.distances().entrySet().stream()
                .filter(each -> each.getValue().cars() >= FEWEST_CARS)
                .sorted(Map.Entry.comparingByKey())
                .map(each -> distance(each.getKey(), each.getValue()))
                .toList();
        var seizing = knowledge.seizing();
        boolean hasSeizing = seizing != null && seizing.cars() >= FEWEST_CARS;
        if (extent.cars() < FEWEST_CARS || (tread.isEmpty() && distance.isEmpty() && !hasSeizing)) {
            throw new Refused(new KnowledgeSaid.TooFewCars(FEWEST_CARS));
        }
        var all = new LinkedHashMap<String, Object>();
        all.put("learned_on", file.learnedOn().toString());
        all.put("release", file.release());
        all.put("cars", extent.cars());
        all.put("shops", extent.shops());
        all.put("visits", extent.visits());
        all.put("from", extent.from().toString());
        all.put("until", extent.until().toString());
        all.put("tread", tread);
        all.put("distance", distance);
        if (seizing != null && hasSeizing) {
            all.put("seizing", seizing(seizing));
        }
        return MAPPER.writeValueAsString(all).replace("\r\n", "\n");
    }

    private static Map<String, Object> row(WearKnowledge.Row row) {
        var learned = row.learned();
        var all = new LinkedHashMap<String, Object>();
        all.put("drive", row.drive().name());
        all.put("season", row.season().name());
        var model = row.tyreModel();
        if (model != null) {
            all.put("tyre_model", model);
        }
        all.put("cars", learned.cars());
        all.put("readings", learned.readings());
        all.put("widening", learned.widening());
        var parameters = new LinkedHashMap<String, Object>();
        for (var parameter : WearParameter.values()) {
            var number = new LinkedHashMap<String, Object>();
            number.put("value", learned.parameters().of(parameter));
            number.put("standard_error", learned.standardErrors().get(parameter));
            parameters.put(parameter.name(), number);
        }
        all.put("parameters", parameters);
        return all;
    }

    private static Map<String, Object> distance(SeasonKind season, DistancePrior distance) {
        var all = new LinkedHashMap<String, Object>();
        all.put("season", season.name());
        all.put("cars", distance.cars());
        all.put("mean_km_per_day", distance.meanKm());
        all.put("car_sd_km_per_day", distance.carSdKm());
        all.put("season_sd_km_per_day", distance.seasonSdKm());
        return all;
    }

    private static Map<String, Object> seizing(LearnedSeizing seizing) {
        var fit = seizing.fit();
        var all = new LinkedHashMap<String, Object>();
        all.put("cars", seizing.cars());
        all.put("pad_times", seizing.padTimes());
        all.put("coefficients", fit.coefficients());
        all.put("scale", fit.scale());
        all.put("covariance", fit.covariance());
        all.put("log_likelihood", fit.logLikelihood());
        return all;
    }

    static KnowledgeFile read(String json) {
        FileObject all;
        try {
            all = new FileObject(MAPPER.readTree(json), "");
        } catch (JacksonException e) {
            throw new Refused(new KnowledgeSaid.Misshapen(""));
        }
        all.has(
                List.of("learned_on", "release", "cars", "shops", "visits", "from", "until", "tread", "distance"),
                List.of("seizing"));
        var learnedOn = all.day("learned_on");
        int cars = all.whole("cars", FEWEST_CARS, MOST_CARS);
        var extent = new Extent(
                cars,
                all.whole("shops", 1, cars),
                all.whole("visits", cars, MOST_VISITS),
                all.day("from"),
                all.day("until"));
        if (extent.until().isBefore(extent.from()) || extent.until().isAfter(learnedOn)) {
            throw new Refused(
                    new KnowledgeSaid.Impossible("/until", extent.until().toString()));
        }
        return new KnowledgeFile(
                extent,
                new Knowledge(
                        learnedOn,
                        new WearKnowledge(rows(all, cars)),
                        distances(all, cars),
                        all.hasOptional("seizing") ? readSeizing(all.child("seizing"), cars) : null),
                all.text("release", LONGEST_RELEASE));
    }

    private static List<WearKnowledge.Row> rows(FileObject all, int cars) {
        var rows = new ArrayList<WearKnowledge.Row>();
        var kinds = new HashSet<List<Object>>();
        for (var each : all.children("tread")) {
            each.has(List.of("drive", "season", "cars", "readings", "widening", "parameters"), List.of("tyre_model"));
            var row = new WearKnowledge.Row(
                    each.constant("drive", DriveLayout.class),
                    each.constant("season", SeasonKind.class),
                    each.hasOptional("tyre_model") ? each.text("tyre_model", LONGEST_NAME) : null,
                    learned(each, cars));
            if (!kinds.add(List.of(row.drive(), row.season(), Objects.requireNonNullElse(row.tyreModel(), "")))) {
                throw new Refused(new KnowledgeSaid.Misshapen(each.where()));
            }
            rows.add(row);
        }
        return rows;
    }

    private static LearnedWear learned(FileObject row, int cars) {
        var parameters = row.child("parameters");
        var names = new ArrayList<String>();
        for (var parameter : WearParameter.values()) {
            names.add(parameter.name());
        }
        parameters.has(names, List.of());
        var values = new EnumMap<WearParameter, Double>(WearParameter.class);
        var errors = new EnumMap<WearParameter, Double>(WearParameter.class);
        for (var parameter : WearParameter.values()) {
            var number = parameters.child(parameter.name());
            number.has(List.of("value", "standard_error"), List.of());
            values.put(parameter, number.number("value", -MOST_COEFFICIENT, MOST_COEFFICIENT));
            errors.put(parameter, number.above("standard_error", MOST_ERROR));
        }
        int ofRow = row.whole("cars", FEWEST_CARS, cars);
        return new LearnedWear(
                parameters(parameters, values),
                errors,
                ofRow,
                row.whole("readings", ofRow, MOST_CARS),
                row.number("widening", 1, MOST_WIDENING));
    }

    private static WearParameters parameters(FileObject where, Map<WearParameter, Double> values) {
        try {
            return new WearParameters(values);
        } catch (IllegalArgumentException e) {
            throw new Refused(new KnowledgeSaid.Impossible(where.where(), PlainText.shown(values.toString())));
        }
    }

    private static Map<SeasonKind, DistancePrior> distances(FileObject all, int cars) {
        var distances = new EnumMap<SeasonKind, DistancePrior>(SeasonKind.class);
        for (var each : all.children("distance")) {
            each.has(
                    List.of("season", "cars", "mean_km_per_day", "car_sd_km_per_day", "season_sd_km_per_day"),
                    List.of());
            var distance = new DistancePrior(
                    each.above("mean_km_per_day", MOST_KM),
                    each.above("car_sd_km_per_day", MOST_KM),
                    each.above("season_sd_km_per_day", MOST_KM),
                    each.whole("cars", FEWEST_CARS, cars));
            if (distances.put(each.constant("season", SeasonKind.class), distance) != null) {
                throw new Refused(new KnowledgeSaid.Misshapen(each.where()));
            }
        }
        return distances;
    }

    private static @Nullable LearnedSeizing readSeizing(FileObject seizing, int cars) {
        seizing.has(List.of("cars", "pad_times", "coefficients", "scale", "covariance", "log_likelihood"), List.of());
        int size = LearnedSeizing.COEFFICIENTS.size();
        int ofSeizing = seizing.whole("cars", FEWEST_CARS, cars);
        return new LearnedSeizing(
                new WeibullFit(
                        seizing.numbers("coefficients", size, MOST_COEFFICIENT),
                        seizing.number("scale", LEAST_SCALE, MOST_SCALE),
                        covariance(seizing, size + 1),
                        seizing.number("log_likelihood", -Double.MAX_VALUE, Double.MAX_VALUE)),
                ofSeizing,
                seizing.whole("pad_times", ofSeizing, MOST_CARS));
    }

    /** Of something that can vary: symmetric and positive definite. */
    private static List<Double> covariance(FileObject seizing, int size) {
        var numbers = seizing.numbers("covariance", size * size, MOST_COEFFICIENT);
        boolean symmetric = true;
        for (int row = 0; row < size; row++) {
            for (int column = 0; column < row; column++) {
                symmetric &= Math.abs(numbers.get(row * size + column) - numbers.get(column * size + row)) <= ROUNDING;
            }
        }
        var matrix = numbers.stream().mapToDouble(Double::doubleValue).toArray();
        if (!symmetric || CholeskyFactor.find(matrix, size).isEmpty()) {
            throw new Refused(
                    new KnowledgeSaid.Impossible(seizing.where() + "/covariance", PlainText.shown(numbers.toString())));
        }
        return numbers;
    }
}
