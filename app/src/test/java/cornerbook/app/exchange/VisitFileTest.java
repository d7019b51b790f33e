package cornerbook.app.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.app.InEnglish;
import cornerbook.app.demo.DemoShop;
import cornerbook.core.car.CarHistory;
import cornerbook.core.finding.Problem;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

class VisitFileTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final JsonMapper MAPPER = JsonMapper.shared();

    private final List<CarHistory> shop = DemoShop.histories(TODAY);

    @Test
    void historyComesBackAsItWasWritten() {
        assertThat(shop)
                .allSatisfy(history -> assertThat(VisitFile.read(VisitFile.write(history), TODAY))
                        .isEqualTo(new VisitFile.Read(history)));
    }

    @Test
    void exampleOfTheDocumentationIsRead() {
        var example = Path.of("..", "docs", "examples", "seasonal-visit.json");

        assertThat(VisitFile.read(example, TODAY)).isInstanceOfSatisfying(VisitFile.Read.class, read -> {
            assertThat(VisitFile.read(VisitFile.write(read.history()), TODAY)).isEqualTo(read);
            // NIST SP 811, appendix B.8: 6.894757 kPa to the psi (from memory).
            assertThat(read.history().vehicle().front().placardPressureKpa()).isCloseTo(36 * 6.894757, within(1e-4));
        });
    }

    @Test
    void readingWithoutAnIdGetsOneFromItsPlace() {
        var text = edited(file -> firstTread(file).remove("id"));

        assertThat(VisitFile.read(text, TODAY)).isInstanceOfSatisfying(VisitFile.Read.class, read -> {
            var visit = read.history().visits().getFirst();
            assertThat(visit.readings())
                    .anySatisfy(reading -> assertThat(reading.id())
                            .isEqualTo(visit.id() + "-tread-depth-LF-inner-" + reading.wheelTag()));
        });
    }

    @Test
    void bareNumberIsInTheBooksUnit() {
        var text = edited(file -> firstTread(file).put("value", 5));

        assertThat(VisitFile.read(text, TODAY))
                .isInstanceOfSatisfying(
                        VisitFile.Read.class,
                        read -> assertThat(read.history().visits().getFirst().readings())
                                .anySatisfy(reading -> {
                                    assertThat(reading.value()).isEqualTo(5);
                                    assertThat(reading.asWritten()).isEqualTo("5 mm");
                                }));
    }

    @Test
    void malformedTextIsRefusedWithItsPlace() {
        assertThat(problems("{\n  \"format\": oops"))
                .singleElement()
                .satisfies(
                        problem -> assertThat(InEnglish.say(problem.message())).contains("line 2", "column"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "[]", "null", "{} {}", "{\"a\":1,\"a\":2}", "1e999", "\"\\ud800\""})
    void whatIsNoVisitFileIsRefused(String text) {
        assertThat(problems(text)).isNotEmpty();
    }

    @Test
    void unknownUnitIsRefused() {
        assertThat(problems(edited(file -> firstTread(file).put("value", "7 furlongs"))))
                .singleElement()
                .satisfies(problem -> {
                    assertThat(problem.where()).matches("/visits/0/readings/\\d+/value");
                    assertThat(InEnglish.say(problem.message())).contains("furlongs", "expected", "mm");
                });
    }

    @Test
    void negativeDepthIsRefused() {
        assertThat(problems(edited(file -> firstTread(file).put("value", "-1 mm"))))
                .singleElement()
                .satisfies(
                        problem -> assertThat(InEnglish.say(problem.message())).startsWith("tread depth is −1"));
    }

    @Test
    void hugeNumberIsRefused() {
        var text = edited(file -> firstTread(file).put("value", 77)).replace(":77", ":1e999");

        assertThat(problems(text)).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e300", "-1e300"})
    void numberThatNothingOnACarHasIsRefusedAtItsPlace(String number) {
        var text = edited(file -> file.withObject("/wheelSets/0/wheels/0/tyre").put("loadIndex", 77))
                .replace(":77", ":" + number);

        assertThat(problems(text)).singleElement().satisfies(problem -> {
            assertThat(problem.where()).isEqualTo("/wheelSets/0/wheels/0/tyre/loadIndex");
            assertThat(InEnglish.say(problem.message()))
                    .contains("too large a number, expected one with at most 12 digits");
        });
    }

    @Test
    void zeroWithASignComesBackAsItWasWritten() {
        var text = edited(file -> firstTread(file).put("value", 77)).replace(":77", ":-0.0");

        assertThat(VisitFile.read(text, TODAY))
                .isInstanceOfSatisfying(
                        VisitFile.Read.class,
                        read -> assertThat(VisitFile.read(VisitFile.write(read.record()), TODAY))
                                .isEqualTo(read));
    }

    @Test
    void longWordsAreNotRepeatedWhole() {
        assertThat(problems("{\"%s\": 1}".formatted("x".repeat(900))))
                .allSatisfy(
                        problem -> assertThat(InEnglish.say(problem.message())).hasSizeLessThan(150));
    }

    @Test
    void readingWithoutItsSpotIsRefusedWithTheSpotsThatItMayHave() {
        assertThat(problems(edited(file -> firstTread(file).remove("spot"))))
                .singleElement()
                .satisfies(problem -> assertThat(InEnglish.say(problem.message()))
                        .isEqualTo("tread depth names no spot, expected one of inner, centre, outer"));
    }

    @Test
    void unknownPropertyIsRefused() {
        assertThat(problems(edited(file -> file.withObject("/vehicle").put("colour", "blue"))))
                .singleElement()
                .satisfies(problem -> {
                    assertThat(problem.where()).isEqualTo("/vehicle/colour");
                    assertThat(InEnglish.say(problem.message())).contains("colour", "expected");
                });
    }

    @Test
    void missingPropertyIsRefused() {
        assertThat(problems(edited(file -> file.withObject("/vehicle").remove("plate"))))
                .extracting(Problem::where)
                .containsExactly("/vehicle/plate");
    }

    @Test
    void wrongWordIsRefusedWithTheRightOnes() {
        assertThat(problems(edited(file -> file.withObject("/vehicle").put("drive", "sideways"))))
                .singleElement()
                .satisfies(problem ->
                        assertThat(InEnglish.say(problem.message())).contains("sideways", "front", "rear", "all"));
    }

    @Test
    void valueOutsideTheRecordsRangeIsRefusedAtItsObject() {
        assertThat(problems(edited(file -> file.withObject("/vehicle/fastener").put("torque", "4 N·m"))))
                .extracting(Problem::where)
                .containsExactly("/vehicle/fastener");
    }

    @Test
    void wheelOnTwoCornersIsRefused() {
        var text = edited(file -> {
            var corners = visit(file, lastVisit(file)).withObject("/arrivedOn");
            corners.put("RF", corners.required("LF").stringValue());
        });

        assertThat(problems(text))
                .anySatisfy(problem ->
                        assertThat(InEnglish.say(problem.message())).contains("at once, expected one corner"));
    }

    @Test
    void futureDateIsRefused() {
        assertThat(problems(edited(file -> visit(file, lastVisit(file)).put("date", "2031-01-02"))))
                .anySatisfy(
                        problem -> assertThat(InEnglish.say(problem.message())).contains("future"));
    }

    @Test
    void dayOutsideTheCalendarIsRefused() {
        assertThat(problems(edited(file -> visit(file, 0).put("date", "2023-02-30"))))
                .extracting(Problem::where)
                .containsExactly("/visits/0/date");
    }

    @Test
    void readingDeeperThanNewIsRefused() {
        assertThat(problems(edited(file -> firstTread(file).put("value", "19 mm"))))
                .singleElement()
                .satisfies(
                        problem -> assertThat(InEnglish.say(problem.message())).contains("deeper than new"));
    }

    @Test
    void odometerRunningBackwardsIsReadAndLeftToBeAskedAbout() {
        assertThat(VisitFile.read(edited(file -> visit(file, lastVisit(file)).put("odometer", "1 km")), TODAY))
                .isInstanceOf(VisitFile.Read.class);
    }

    @Test
    void atMostTwentyProblemsAreTold() {
        var text = edited(file -> visit(file, 0)
                .withArray("/readings")
                .forEach(reading -> ((ObjectNode) reading).put("value", "7 furlongs")));

        assertThat(problems(text)).hasSize(VisitFile.MOST_PROBLEMS);
    }

    @Test
    void smallestExampleIsRead() {
        var example = Path.of("..", "docs", "examples", "first-visit.json");

        assertThat(VisitFile.read(example, TODAY))
                .isInstanceOfSatisfying(
                        VisitFile.Read.class,
                        read -> assertThat(VisitFile.read(VisitFile.write(read.history()), TODAY))
                                .isEqualTo(read));
    }

    @Test
    void textMayBeginWithAByteOrderMark() {
        assertThat(VisitFile.read("\ufeff" + edited(file -> {}), TODAY)).isInstanceOf(VisitFile.Read.class);
    }

    @Test
    void pointerEscapesTheNamesOfProperties() {
        assertThat(problems(edited(file -> file.put("a/b~c", 1))))
                .extracting(Problem::where)
                .containsExactly("/a~1b~0c");
    }

    @Test
    void pinsThatTheCaliperHasNotStandAsItsKindMayHaveBeenPutRight() {
        var text = edited(file -> {
            var reading = firstTread(file);
            reading.put("measure", "retaining pin movement").put("value", "free");
            reading.remove(List.of("wheel", "spot"));
        });

        assertThat(VisitFile.read(text, TODAY)).isInstanceOf(VisitFile.Read.class);
    }

    @Test
    void movementBetweenTheWordsIsRefused() {
        var text =
                edited(file -> firstTread(file).put("measure", "pad movement").put("value", 1.5));

        assertThat(problems(text))
                .singleElement()
                .satisfies(problem ->
                        assertThat(InEnglish.say(problem.message())).contains("\"1.5\"", "free, tight, seized"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\u0000", "\u001b[31m", "\ud800", "\uffff"})
    void textThatCannotBePrintedIsRefused(String name) {
        assertThat(problems(edited(file -> file.withObject("/customer").put("name", name))))
                .singleElement()
                .satisfies(problem -> {
                    assertThat(problem.where()).isEqualTo("/customer/name");
                    assertThat(InEnglish.say(problem.message())).contains("U+", "expected text that can be printed");
                });
    }

    @Test
    void textLargerThanTheLimitIsRefused() {
        assertThat(problems(" ".repeat(100_000_001)))
                .singleElement()
                .satisfies(
                        problem -> assertThat(InEnglish.say(problem.message())).contains("larger than 100 MB"));
    }

    @Test
    void deepNestingIsRefused() {
        assertThat(problems("[".repeat(100_000)))
                .singleElement()
                .satisfies(
                        problem -> assertThat(InEnglish.say(problem.message())).contains("nested too deeply"));
    }

    @Test
    void missingFileIsRefused() {
        assertThat(VisitFile.read(Path.of("no-such-file.json"), TODAY)).isInstanceOf(VisitFile.Refused.class);
    }

    private String edited(Consumer<ObjectNode> edit) {
        var file = (ObjectNode) MAPPER.readTree(VisitFile.write(shop.getFirst()));
        edit.accept(file);
        return MAPPER.writeValueAsString(file);
    }

    private static int lastVisit(ObjectNode file) {
        return file.withArray("/visits").size() - 1;
    }

    private static ObjectNode visit(ObjectNode file, int index) {
        return (ObjectNode) file.withArray("/visits").get(index);
    }

    private static ObjectNode reading(ObjectNode file, int index) {
        ArrayNode readings = visit(file, 0).withArray("/readings");
        return (ObjectNode) readings.get(index);
    }

    private static ObjectNode firstTread(ObjectNode file) {
        int index = 0;
        while (!reading(file, index).required("measure").stringValue().equals("tread depth")) {
            index++;
        }
        return reading(file, index);
    }

    private static List<Problem> problems(String text) {
        return VisitFile.read(text, TODAY) instanceof VisitFile.Refused refused ? refused.problems() : List.of();
    }
}
