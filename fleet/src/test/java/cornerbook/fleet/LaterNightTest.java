package cornerbook.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.app.book.knowledge.InformingCars;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.exchange.VisitFile;
import cornerbook.core.car.CarHistory;
import cornerbook.core.say.Day;
import cornerbook.core.say.Refused;
import cornerbook.words.Language;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.spark.SparkConf;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A night that takes over what did not move, beside the same night that reckons all. All cars are invented. */
class LaterNightTest {
    private static final LocalDate FIRST_DAY = LocalDate.of(2026, 11, 29);
    private static final LocalDate DAY = LocalDate.of(2026, 11, 30);
    private static final int CARS = 40;
    /** So few that some cars are not learned from. */
    private static final int OF_A_KIND = 6;

    @TempDir
    private static Path folder;

    private static SparkSession spark;
    /** By id. */
    private static List<CarHistory> histories;

    @BeforeAll
    static void aNight() throws IOException {
        spark = Fleet.session(
                new SparkConf().set("spark.sql.shuffle.partitions", "2").set("spark.sql.codegen.wholeStage", "false"));
        histories = DemoShop.histories(FIRST_DAY, 0, CARS)
                .sorted(Comparator.comparing(car -> car.vehicle().id()))
                .toList();
        var before = new TreeMap<>(files(histories));
        before.put("late.json", text(without(car(1), 1)));
        before.remove(name(1));
        before.put(name(2), text(without(car(2), car(2).visits().size() - 1)));
        before.put(name(3), text(car(3)).replaceFirst("\"odometer\" *: *\"[^\"]*\"", "\"odometer\" : \"9 km\""));
        before.put(name(4), "{");
        before.remove(name(5));
        before.put(
                "gone.json",
                text(DemoShop.histories(FIRST_DAY, CARS, CARS + 1).findFirst().orElseThrow()));
        write("before", before);
        var now = new TreeMap<>(files(histories));
        now.put(name(6), "{");
        write("now", now);
        run("first", "before", FIRST_DAY, null, false);
    }

    @AfterAll
    static void stop() {
        spark.stop();
    }

    private static CarHistory car(int place) {
        return histories.get(place);
    }

    private static CarHistory without(CarHistory car, int visit) {
        var visits = new ArrayList<>(car.visits());
        visits.remove(visit);
        return new CarHistory(car.vehicle(), car.customer(), car.sets(), visits);
    }

    private static String text(CarHistory car) {
        return VisitFile.write(car);
    }

    private static String name(int place) {
        return car(place).vehicle().id() + ".json";
    }

    private static Map<String, String> files(List<CarHistory> cars) {
        return cars.stream().collect(Collectors.toMap(car -> car.vehicle().id() + ".json", LaterNightTest::text));
    }

    private static void write(String name, Map<String, String> files) throws IOException {
        var target = Files.createDirectory(folder.resolve(name));
        for (var file : files.entrySet()) {
            Files.writeString(target.resolve(file.getKey()), file.getValue());
        }
    }

    private static String at(String name) {
        return folder.resolve(name).toString();
    }

    private static Night.Counts run(
            String name, String cars, LocalDate day, @Nullable String since, boolean keepLearned) throws IOException {
        return new Night(day, null, Language.ENGLISH, OF_A_KIND)
                .run(
                        spark,
                        CarLines.read(spark, at(cars)),
                        since == null ? null : LastNight.read(spark, at(since), day),
                        keepLearned,
                        at(name));
    }

    private static List<Row> table(String of, String name) {
        return spark.read().parquet(at(of) + "/" + name).collectAsList();
    }

    /** Each row as text, each number to its last bit. */
    private static Map<String, List<String>> tables(String of) {
        var tables = new TreeMap<String, List<String>>();
        for (var name : List.of("cars", "horizons", "demand", "learned", "set_aside")) {
            tables.put(
                    name, table(of, name).stream().map(Row::toString).sorted().toList());
        }
        return tables;
    }

    private static Map<String, List<String>> changed(String of) {
        return table(of, "changed").stream()
                .collect(Collectors.groupingBy(
                        row -> row.<String>getAs("car"),
                        TreeMap::new,
                        Collectors.mapping(row -> row.getAs("what") + " " + row.getAs("why"), Collectors.toList())));
    }

    @Test
    void whatIsTakenOverIsWhatWouldBeReckoned() throws IOException {
        var all = run("all", "now", DAY, null, false);
        var later = run("later", "now", DAY, "first", false);
        assertThat(later.judged()).isEqualTo(all.judged()).isEqualTo(CARS - 1);
        assertThat(later.setAside()).isEqualTo(1);
        assertThat(tables("later")).isEqualTo(tables("all"));
        var changed = changed("later");
        assertThat(changed.get(car(1).vehicle().id())).contains("FILE LATE_OR_CORRECTED");
        assertThat(changed.get(car(2).vehicle().id())).contains("FILE NEW_VISIT", "VISIT NEW_VISIT");
        assertThat(changed.get(car(3).vehicle().id()))
                .containsAnyOf("FILE LATE_OR_CORRECTED", "CAR NO_LONGER_SET_ASIDE");
        assertThat(changed.get(car(4).vehicle().id())).containsExactly("CAR NO_LONGER_SET_ASIDE");
        assertThat(changed.get(car(5).vehicle().id())).containsExactly("CAR NEW_CAR");
        assertThat(changed.get(car(6).vehicle().id())).containsExactly("CAR SET_ASIDE");
        assertThat(changed.values().stream().flatMap(List::stream))
                .as("the car that is no longer there")
                .containsOnlyOnce("CAR NOT_IN_INPUT");

        var page = Files.readString(folder.resolve("later").resolve(ReportPage.FILE));
        assertThat(page)
                .contains(
                        "<h1>All cars, 30 Nov 2026</h1>",
                        CARS - 1 + " cars have findings",
                        "no longer among the cars",
                        "29 Nov 2026",
                        "Nothing was signed for the shops this time.")
                .doesNotContain("knowledge.txt", "src=", "href=", "null");

        // Nothing has news: nothing is reckoned, and nothing changed.
        assertThat(run("again", "now", DAY, "later", false)).isEqualTo(new Night.Counts(CARS - 1, 0, 1));
        assertThat(tables("again")).isEqualTo(tables("all"));
        assertThat(table("again", "changed")).isEmpty();

        // A car with news that nobody learns from moves no other.
        var unlearned = unlearned();
        var files = new TreeMap<>(files(histories));
        files.put(name(6), "{");
        files.put(
                unlearned.vehicle().id() + ".json",
                text(without(unlearned, unlearned.visits().size() - 1)));
        write("one", files);
        assertThat(run("one-later", "one", DAY, "again", false)).isEqualTo(new Night.Counts(CARS - 1, 1, 1));
        run("one-all", "one", DAY, null, false);
        assertThat(tables("one-later")).isEqualTo(tables("one-all"));
        assertThat(changed("one-later").keySet())
                .containsExactly(unlearned.vehicle().id());
    }

    /** The last in the scattered order: it has a visit to lose, and is not chosen. */
    private static CarHistory unlearned() {
        var kinds = new LinkedHashMap<String, Set<InformingCars.Kind>>();
        histories.stream()
                .filter(car -> car.vehicle().drive() != null && !car.equals(car(6)))
                .forEach(car -> kinds.put(car.vehicle().id(), Look.kinds(car)));
        var chosen = InformingCars.choose(kinds, OF_A_KIND);
        return histories.stream()
                .filter(car -> kinds.containsKey(car.vehicle().id())
                        && !chosen.contains(car.vehicle().id())
                        && car.visits().size() > 2)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whoKeepsWhatWasLearnedReckonsCarsWithNewsAlone() throws IOException {
        var counts = run("kept", "now", DAY, "first", true);
        assertThat(counts).isEqualTo(new Night.Counts(CARS - 1, 5, 1));
        assertThat(tables("kept").get("learned")).isEqualTo(tables("first").get("learned"));
        assertThat(changed("kept").values().stream().flatMap(List::stream)).noneMatch(each -> each.endsWith("LEARNED"));
        run("kept-again", "now", DAY, "kept", true);
        assertThat(tables("kept-again")).isEqualTo(tables("kept"));
    }

    @Test
    void whatIsNoEarlierNightIsRefused() {
        assertThatThrownBy(() -> LastNight.read(spark, at("now"), DAY))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused -> assertThat(refused.said()).isEqualTo(new FleetSaid.NoNight(at("now"))));
        assertThatThrownBy(() -> LastNight.read(spark, at("first"), FIRST_DAY.minusDays(1)))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused -> assertThat(refused.said())
                                .isEqualTo(new FleetSaid.LaterNight(
                                        at("first"), new Day(FIRST_DAY), new Day(FIRST_DAY.minusDays(1)))));
    }
}
