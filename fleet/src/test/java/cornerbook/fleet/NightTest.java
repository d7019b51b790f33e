package cornerbook.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import cornerbook.app.book.knowledge.InformingCars;
import cornerbook.app.book.order.OrderList;
import cornerbook.app.book.verdict.Gravest;
import cornerbook.app.calibration.KeptPromises;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.exchange.VisitFile;
import cornerbook.app.knowledge.KnowledgeFile;
import cornerbook.app.knowledge.SigningKey;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.assess.Assessor;
import cornerbook.core.assess.CarShare;
import cornerbook.core.assess.Learner;
import cornerbook.core.car.CarHistory;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Knowledge;
import cornerbook.core.finding.Verdict;
import cornerbook.core.order.Article;
import cornerbook.core.order.Demand;
import cornerbook.core.order.OrderPart;
import cornerbook.core.order.judge.CarNeed;
import cornerbook.core.say.Refused;
import cornerbook.words.Language;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.atomic.LongAdder;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.spark.SparkConf;
import org.apache.spark.TaskContext;
import org.apache.spark.api.java.function.FilterFunction;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Checked against the core's own path in one process, car after car, without Spark. All cars are invented. */
class NightTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 30);
    private static final int CARS = 112;
    /** Fewer than there are of a kind, so that it matters which are learned from. */
    private static final int OF_A_KIND = 30;

    private static final int CALIBRATED = 60;

    @TempDir
    private static Path folder;

    private static SparkSession spark;
    private static SigningKey key;
    private static List<CarHistory> histories;
    private static String night;
    private static Alone alone;
    /** How often a task was made to fail; tasks run in this process. */
    private static final LongAdder FAILED = new LongAdder();

    @BeforeAll
    static void aNight() throws IOException {
        key = SigningKey.make(folder.resolve("key"));
        spark = Fleet.session(
                new SparkConf().set("spark.sql.shuffle.partitions", "2").set("spark.sql.codegen.wholeStage", "false"));
        histories = DemoShop.histories(DAY, 0, CARS)
                .sorted(Comparator.comparing(car -> car.vehicle().id()))
                .toList();
        for (var car : histories) {
            var site = site(car.vehicle().id());
            var cars = folder.resolve("cars");
            Files.writeString(
                    Files.createDirectories(site == null ? cars : cars.resolve(site))
                            .resolve(car.vehicle().id() + ".json"),
                    VisitFile.write(car));
        }
        alone = alone(histories);
        night = run("night", lines());
    }

    @AfterAll
    static void stop() {
        spark.stop();
    }

    /** One site has half of all cars, another a quarter; of the others nobody has told. */
    private static @Nullable String site(String car) {
        return switch (Math.floorMod(car.hashCode(), 4)) {
            case 0, 1 -> "Grand-Cric n° 1";
            case 2 -> "Val+Nord";
            default -> null;
        };
    }

    private record Alone(int chosen, Knowledge knowledge, List<CarHistory> cars, List<Assessor.Outcome> outcomes) {}

    /** The same in one process: the shares of the cars that are learned from, summed, and each car judged by what they teach. */
    private static Alone alone(List<CarHistory> cars) {
        var kinds = new LinkedHashMap<String, Set<InformingCars.Kind>>();
        cars.stream()
                .filter(car -> car.vehicle().drive() != null)
                .forEach(car -> kinds.put(car.vehicle().id(), Look.kinds(car)));
        var chosen = Set.copyOf(InformingCars.choose(kinds, OF_A_KIND));
        var knowledge = Learner.sum(
                cars.stream()
                        .filter(car -> chosen.contains(car.vehicle().id()))
                        .map(CarShare::of)
                        .toList(),
                DAY);
        var assessor = new Assessor(LimitsFile.load()).with(knowledge);
        return new Alone(
                chosen.size(),
                knowledge,
                cars,
                cars.stream()
                        .map(car -> assessor.outcome(car, car.visits().getLast().id()))
                        .toList());
    }

    private static Dataset<Row> lines() {
        return CarLines.read(spark, folder.resolve("cars").toString());
    }

    private static String run(String name, Dataset<Row> lines) throws IOException {
        var target = folder.resolve(name).toString();
        new Night(DAY, null, Language.ENGLISH, OF_A_KIND, name.equals("night") ? CALIBRATED : 0, key)
                .run(spark, lines, target);
        return target;
    }

    private static List<Row> table(String of, String name) {
        return spark.read().parquet(of + "/" + name).collectAsList();
    }

    /** The rows of all tables as texts, in an order of their own. A text has each number to its last bit. */
    private static Map<String, List<String>> tables(String of) {
        var tables = new TreeMap<String, List<String>>();
        for (var name : List.of("cars", "horizons", "demand", "order", "risk", "verdicts", "learned", "set_aside")) {
            tables.put(
                    name, table(of, name).stream().map(Row::toString).sorted().toList());
        }
        return tables;
    }

    private static List<String> texts(List<Row> rows) {
        return rows.stream().map(Row::toString).sorted().toList();
    }

    /** A shop's book takes in what one process without Spark learns, with how much stands behind it and nothing of a car. */
    @Test
    void whatWasLearnedIsSignedForTheShops() throws IOException {
        var text = Files.readString(Path.of(night, Night.KNOWLEDGE));
        var read = KnowledgeFile.read(text, key.publicKey()::equals, DAY);
        assertThat(read.file().knowledge().wear().rows())
                .isEqualTo(alone.knowledge().wear().rows().stream()
                        .filter(row -> row.learned().cars() >= 5)
                        .toList());
        assertThat(read.file().knowledge().seizing())
                .isEqualTo(alone.knowledge().seizing());
        assertThat(read.file().extent().cars()).isBetween(OF_A_KIND, alone.chosen());
        assertThat(read.file().extent().shops()).isEqualTo(3);
        assertThat(Files.readString(Path.of(night, ReportPage.FILE)))
                .contains(
                        "what " + read.file().extent().cars() + " cars of 3 shops taught",
                        "the key " + key.publicKey().fingerprint() + ".",
                        "cornerbook knowledge take knowledge.txt");
        assertThat(read.file().extent().from())
                .isAfterOrEqualTo(histories.stream()
                        .map(car -> car.visits().getFirst().date())
                        .min(Comparator.naturalOrder())
                        .orElseThrow());
        assertThat(histories)
                .allSatisfy(car -> assertThat(text)
                        .doesNotContain(
                                car.vehicle().id(),
                                car.vehicle().name(),
                                car.customer().name()));
        assertThat(Path.of(night, "." + Night.KNOWLEDGE + ".crc")).doesNotExist();
    }

    @Test
    void theCarsAreLearnedFromAsOnOneMachine() {
        assertThat(alone.chosen()).isLessThan(CARS);
        assertThat(texts(table(night, "learned")))
                .hasSizeGreaterThan(30)
                .containsExactlyInAnyOrderElementsOf(texts(LearnedTable.of(alone.knowledge())));
    }

    /** The definitions are those of the page on calibration, which holds them in tests of its own. */
    @Test
    void forecastsAtPastVisitsAreHeldAgainstWhatCame() {
        var cars = histories.stream()
                .sorted(Comparator.<CarHistory>comparingInt(
                                car -> InformingCars.scattered(car.vehicle().id()))
                        .thenComparing(car -> car.vehicle().id()))
                .limit(CALIBRATED)
                .sorted(Comparator.comparing(car -> car.vehicle().id()))
                .toList();
        var assessors = IntStream.range(0, 2)
                .mapToObj(half -> new Assessor(LimitsFile.load())
                        .with(Learner.learn(
                                IntStream.range(0, CALIBRATED)
                                        .filter(place -> place % 2 != half)
                                        .mapToObj(cars::get)
                                        .toList(),
                                DAY)))
                .toList();
        var kept = KeptPromises.of(IntStream.range(0, CALIBRATED)
                .mapToObj(place -> KeptPromises.ofCar(assessors.get(place % 2), cars.get(place))));
        assertThat(kept.stream().filter(each -> each.value() != null)).hasSizeGreaterThan(4);
        assertThat(table(night, "calibration").stream()
                        .map(row -> row.getAs("figure") + " " + row.getAs("value") + " " + row.getAs("standard_error")))
                .containsExactlyElementsOf(kept.stream()
                        .map(each -> each.name() + " " + each.value() + " " + each.standardError())
                        .toList());
    }

    /** What goes to other machines. */
    @Test
    void whatWasLearnedTravelsToTheLastBit() {
        assertThat(JudgedBy.of(alone.knowledge(), null).read()).isEqualTo(alone.knowledge());
        assertThat(JudgedBy.of(Knowledge.NONE, null).read()).isEqualTo(Knowledge.NONE);
    }

    @Test
    void eachCarIsJudgedAsOnOneMachine() {
        assertThat(table(night, "cars").stream()
                        .map(row -> List.of(
                                row.getAs("car"),
                                row.getAs("visit"),
                                row.getAs("day"),
                                row.getAs("odometer_km"),
                                row.getAs("verdict"),
                                row.getAs("urgency"),
                                row.getAs("life_left")))
                        .toList())
                .hasSize(CARS)
                .containsExactlyInAnyOrderElementsOf(IntStream.range(0, CARS)
                        .mapToObj(place -> {
                            var car = alone.cars().get(place);
                            var visit = car.visits().getLast();
                            var gravest = Gravest.of(alone.outcomes().get(place).findings())
                                    .orElseThrow();
                            return List.<Object>of(
                                    car.vehicle().id(),
                                    visit.id(),
                                    visit.date(),
                                    visit.odometerKm(),
                                    gravest.verdict().name(),
                                    gravest.urgency().name(),
                                    gravest.lifeLeft());
                        })
                        .toList());
    }

    @Test
    void eachHorizonIsThatOfOneMachine() {
        var expected = new ArrayList<List<@Nullable Object>>();
        for (int place = 0; place < CARS; place++) {
            var id = alone.cars().get(place).vehicle().id();
            alone.outcomes().get(place).findings().forEach(finding -> expected.add(horizon(id, finding)));
        }
        assertThat(table(night, "horizons").stream()
                        .map(row -> Arrays.<@Nullable Object>asList(
                                row.getAs("car"),
                                row.getAs("part"),
                                row.getAs("corner"),
                                row.getAs("set"),
                                row.getAs("wheel"),
                                row.getAs("verdict"),
                                row.getAs("horizon"),
                                row.getAs("holds_until_next_visit"),
                                row.getAs("life_left")))
                        .toList())
                .hasSizeGreaterThan(10 * CARS)
                .containsExactlyInAnyOrderElementsOf(expected);
    }

    private static List<@Nullable Object> horizon(String car, Finding finding) {
        var subject = finding.subject();
        var corner = subject.corner();
        return Arrays.asList(
                car,
                subject.part().name(),
                corner == null ? null : corner.name(),
                subject.setId(),
                subject.wheelTag(),
                finding.verdict().name(),
                finding.horizon(),
                finding.probability(),
                finding.lifeLeft());
    }

    /** Of all cars, where the site is null, and of each site. */
    private static List<@Nullable String> sites() {
        return Arrays.asList(null, "Grand-Cric n° 1", "Val+Nord");
    }

    private static Stream<Integer> ofSite(@Nullable String site) {
        return IntStream.range(0, CARS)
                .filter(place -> site == null
                        || site.equals(site(alone.cars().get(place).vehicle().id())))
                .boxed();
    }

    private static List<Row> rowsOf(List<Row> table, @Nullable String site) {
        return table.stream()
                .filter(row -> Objects.equals(row.getAs(CarLines.SITE), site))
                .toList();
    }

    @Test
    void demandIsWhatTheCarsMayNeedTogether() {
        var demand = table(night, "demand");
        for (var site : sites()) {
            var byWeek =
                    needs(site).collect(Collectors.groupingBy(need -> List.of(need.article(), monday(need.due()))));
            assertThat(byWeek.values())
                    .as("weeks in which several cars need the same")
                    .anyMatch(needs -> needs.size() > 5);
            demanded(rowsOf(demand, site), byWeek, row -> List.of(article(row), row.<LocalDate>getAs("week")));
        }
    }

    @Test
    void whatIsToBeOrderedIsThatOfEachSite() {
        var order = table(night, "order");
        var from = OrderList.usualFrom(DAY);
        var until = OrderList.usualUntil(DAY, Optional.empty());
        for (var site : sites()) {
            demanded(
                    rowsOf(order, site),
                    needs(site)
                            .filter(need ->
                                    !need.due().isBefore(from) && !need.due().isAfter(until))
                            .collect(Collectors.groupingBy(CarNeed::article)),
                    NightTest::article);
            assertThat(rowsOf(order, site))
                    .allMatch(row ->
                            row.getAs("from").equals(from) && row.getAs("until").equals(until));
        }
    }

    private static Stream<CarNeed> needs(@Nullable String site) {
        return ofSite(site).flatMap(place -> alone.outcomes().get(place).needs().stream());
    }

    private static Article article(Row row) {
        return new Article(OrderPart.valueOf(row.getAs("part")), row.getAs("kind"), row.<String>getAs("article"));
    }

    private static <K> void demanded(List<Row> demand, Map<K, List<CarNeed>> needs, Function<Row, K> key) {
        assertThat(demand).hasSameSizeAs(needs.keySet());
        for (var row : demand) {
            var ofRow = Objects.requireNonNull(needs.get(key.apply(row)));
            double expected =
                    ofRow.stream().mapToDouble(need -> need.need().mean()).sum();
            assertThat(row.<Double>getAs("expected_pieces")).isCloseTo(expected, within(1e-12 * (1 + expected)));
            assertThat(row.<Integer>getAs("enough_90"))
                    .isEqualTo(Demand.of(ofRow.stream().map(CarNeed::need).toList())
                            .quantity(0.9));
        }
    }

    @Test
    void whatStandsBeforeEachSiteIsCounted() {
        for (var site : sites()) {
            assertThat(rowsOf(table(night, "verdicts"), site).stream()
                            .collect(Collectors.toMap(
                                    row -> row.getAs("verdict") + " " + row.getAs("urgency"),
                                    row -> row.<Long>getAs("cars"))))
                    .isEqualTo(ofSite(site)
                            .map(place -> Gravest.of(alone.outcomes().get(place).findings())
                                    .orElseThrow())
                            .collect(Collectors.groupingBy(
                                    gravest -> gravest.verdict() + " " + gravest.urgency(), Collectors.counting())));
            var parts = ofSite(site)
                    .flatMap(place -> alone.outcomes().get(place).findings().stream())
                    .collect(Collectors.groupingBy(
                            finding -> finding.subject().part().name()));
            var risk = rowsOf(table(night, "risk"), site);
            assertThat(risk).hasSameSizeAs(parts.keySet());
            for (var row : risk) {
                var findings = Objects.requireNonNull(parts.get(row.<String>getAs("part")));
                var open = findings.stream()
                        .filter(finding -> finding.verdict() == Verdict.HOLDS || finding.verdict() == Verdict.RUNS_OUT)
                        .toList();
                assertThat(row.<Long>getAs("findings")).isEqualTo(findings.size());
                assertThat(row.<Long>getAs("spent")).isEqualTo(findings.size() - open.size());
                double expected = open.stream()
                        .map(Finding::probability)
                        .filter(Objects::nonNull)
                        .mapToDouble(holds -> 1 - holds)
                        .sum();
                assertThat(Objects.requireNonNullElse(row.<@Nullable Double>getAs("expected_not_to_hold"), 0.0))
                        .isCloseTo(expected, within(1e-12 * (1 + expected)));
            }
        }
    }

    private static LocalDate monday(LocalDate day) {
        return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }

    @Test
    void howTheCarsAreSpreadChangesNoBit() throws IOException {
        var tables = tables(night);
        assertThat(tables(run("two", lines().repartition(2)))).isEqualTo(tables);
        assertThat(tables(run("seven", lines().repartition(7)))).isEqualTo(tables);
    }

    @Test
    void carsInOneFileAreTheSameCars() throws IOException {
        var packed = folder.resolve("packed").toString();
        lines().select(CarLines.TEXT).coalesce(1).write().parquet(packed);
        var withSites = folder.resolve("with-sites").toString();
        lines().select(CarLines.TEXT, CarLines.SITE).coalesce(1).write().parquet(withSites);
        assertThat(texts(CarLines.read(spark, withSites)
                        .select(CarLines.SITE, CarLines.DIGEST)
                        .collectAsList()))
                .isEqualTo(texts(lines().select(CarLines.SITE, CarLines.DIGEST).collectAsList()));
        var tables = tables(run("of-one-file", CarLines.read(spark, packed)));
        for (var name : List.of("horizons", "demand", "learned")) {
            assertThat(tables.get(name))
                    .isEqualTo(Objects.requireNonNull(tables(night).get(name)).stream()
                            .filter(row -> !name.equals("demand") || row.startsWith("[null,"))
                            .toList());
        }
    }

    /** Each task of each pass fails when it is first done, half way through its cars. */
    @Test
    void aTaskThatFailsIsDoneAgain() throws IOException {
        FAILED.reset();
        var failing = lines().repartition(3).filter((FilterFunction<Row>) line -> {
            var task = TaskContext.get();
            if (task.attemptNumber() == 0 && line.<String>getAs(CarLines.DIGEST).startsWith("7")) {
                FAILED.increment();
                throw new IllegalStateException("this task was told to fail");
            }
            return true;
        });
        assertThat(tables(run("failing", failing))).isEqualTo(tables(night));
        assertThat(FAILED.sum()).isGreaterThanOrEqualTo(6);
    }

    @Test
    void aBadCarIsSetAsideAndTheOthersAreJudged() throws IOException {
        var cars = Files.createDirectory(folder.resolve("bad"));
        var some = histories.subList(0, 40);
        for (var car : some) {
            Files.writeString(cars.resolve(car.vehicle().id() + ".json"), VisitFile.write(car));
        }
        var one = VisitFile.write(some.getFirst());
        Files.writeString(cars.resolve("not-json.json"), "{");
        Files.writeString(
                cars.resolve("deep.json"), one.replaceFirst("\"odometer\" *: *\"[^\"]*\"", "\"odometer\" : \"-5 km\""));
        Files.write(cars.resolve("latin.json"), new byte[] {'{', (byte) 0xe9, '}'});
        Files.writeString(
                cars.resolve("never-seen.json"),
                VisitFile.write(new CarHistory(
                        histories.getLast().vehicle(),
                        histories.getLast().customer(),
                        histories.getLast().sets(),
                        List.of())));
        Files.writeString(cars.resolve("again.json"), one);
        var target = folder.resolve("of-bad").toString();
        var counts = new Night(DAY, null, Language.ENGLISH, OF_A_KIND)
                .run(spark, CarLines.read(spark, cars.toString()), target);
        assertThat(counts).isEqualTo(new Night.Counts(39, 39, 6));
        var reasons = table(target, "set_aside").stream()
                .collect(Collectors.toMap(
                        row -> row.<String>getAs("file"),
                        row -> row.getAs("place") + " " + row.getAs("reason"),
                        (first, second) -> first + "\n" + second));
        assertThat(reasons).hasSize(6);
        assertThat(reasons.get("not-json.json")).contains("JSON");
        assertThat(reasons.get("deep.json")).startsWith("/visits/0 ").contains("odometer", "−5");
        assertThat(reasons.get("latin.json")).contains("UTF-8");
        assertThat(reasons.get("never-seen.json")).contains("no visit yet");
        assertThat(reasons.get("again.json"))
                .isEqualTo(reasons.get(some.getFirst().vehicle().id() + ".json"))
                .contains("more than once");
        assertThat(table(target, "cars").stream().map(row -> row.<String>getAs("car")))
                .containsExactlyInAnyOrderElementsOf(
                        some.stream().skip(1).map(car -> car.vehicle().id()).toList());
        assertThat(texts(table(target, "learned")))
                .as("learned from the others")
                .isEqualTo(texts(
                        LearnedTable.of(alone(some.subList(1, some.size())).knowledge())));
        assertThat(new File(target).list())
                .containsExactlyInAnyOrder(
                        "cars",
                        "demand",
                        "for_next_night",
                        "horizons",
                        "learned",
                        "order",
                        "report.html",
                        "risk",
                        "set_aside",
                        "verdicts");
    }

    @Test
    void whatIsThereIsNotWrittenOver() {
        assertThatThrownBy(() -> run("night", lines()))
                .isInstanceOfSatisfying(
                        Refused.class, refused -> assertThat(refused.said()).isEqualTo(new FleetSaid.IsThere(night)));
        assertThatThrownBy(() -> CarLines.read(spark, folder.resolve("nowhere").toString()))
                .isInstanceOfSatisfying(
                        Refused.class, refused -> assertThat(refused.said()).isInstanceOf(FleetSaid.NoCars.class));
    }

    /** More than are made in one go. */
    @Test
    void madeCarsAreThoseOfTheInventedShop() {
        var made = MadeCars.of(spark, DAY, 103).collectAsList().stream()
                .map(row -> row.<String>getAs(CarLines.TEXT))
                .toList();
        assertThat(made)
                .hasSize(103)
                .startsWith(DemoShop.histories(DAY, 0, 20).map(VisitFile::write).toArray(String[]::new))
                .endsWith(DemoShop.histories(DAY, 95, 103).map(VisitFile::write).toArray(String[]::new));
        assertThatThrownBy(() -> MadeCars.of(spark, DAY, MadeCars.MOST + 1))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused -> assertThat(refused.said()).isEqualTo(new FleetSaid.TooManyCars(MadeCars.MOST)));
    }
}
