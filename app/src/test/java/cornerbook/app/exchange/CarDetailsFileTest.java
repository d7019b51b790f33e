package cornerbook.app.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import cornerbook.app.InEnglish;
import cornerbook.app.demo.DemoShop;
import cornerbook.core.finding.Problem;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import org.assertj.core.api.AbstractListAssert;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** What a visit file says of a car beyond its specification is refused where it cannot stand. */
class CarDetailsFileTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    @Test
    void aFrontShareOutsideItsRangeIsRefusedAtTheBody() {
        assertThatProblems(problems(car -> car.withObject("/body").put("frontShare", 0.9)))
                .containsExactly(tuple("/vehicle/body", "share on the front axle is 0.9, expected 0.2 to 0.8"));
    }

    @Test
    void liftPointsInTheWrongOrderAreRefused() {
        assertThatProblems(problems(car -> car.withObject("/body/liftPoints/LR").put("behindFrontAxle", 100)))
                .containsExactly(tuple(
                        "/vehicle/body/liftPoints", "lift point LF is not ahead of LR, expected the front ones ahead"));
    }

    @Test
    void aParkingBrakeThatContradictsItselfIsRefused() {
        assertThatProblems(problems(car -> car.withObject("/rearAxle/brake").put("parkingBrake", "cable")))
                .containsExactly(tuple(
                        "/vehicle/rearAxle/brake",
                        "parking brake is electric but its kind has no motor, expected a kind with a motor"));
    }

    @Test
    void aRefinishThicknessBelowTheMinimumIsRefused() {
        assertThatProblems(problems(car -> car.withObject("/rearAxle/brake").put("refinishThickness", "20 mm")))
                .containsExactly(tuple("/vehicle/rearAxle/brake", "refinish thickness is 20 mm, expected 24 to 26 mm"));
    }

    /** A drum has neither caliper nor disc, and all four of its own numbers. */
    @Test
    void aBrakeIsOfADiscOrOfADrum() {
        assertThatProblems(
                        problems(car -> drum(car.withObject("/rearAxle/brake")).put("caliper", "sliding")))
                .containsExactly(tuple(
                        "/vehicle/rearAxle/brake", "brake has a drum and something of a disc, expected one of them"));
        assertThatProblems(
                        problems(car -> drum(car.withObject("/rearAxle/brake")).remove("liningNew")))
                .extracting(problem -> problem.toList().getFirst())
                .contains("/vehicle/rearAxle/brake/liningNew");
        assertThatProblems(problems(car -> car.withObject("/rearAxle/brake").remove("discNew")))
                .extracting(problem -> problem.toList().getFirst())
                .contains("/vehicle/rearAxle/brake/discNew");
        assertThatProblems(
                        problems(car -> drum(car.withObject("/rearAxle/brake")).put("drumDiscard", "170 mm")))
                .containsExactly(tuple(
                        "/vehicle/rearAxle/brake",
                        "discard diameter of the drum is 170 mm, expected 180.1 to 190.0 mm"));
        assertThatProblems(problems(car -> car.withObject("/frontAxle/brake").put("pistons", 7)))
                .extracting(problem -> problem.toList().getFirst())
                .containsExactly("/vehicle/frontAxle/brake/pistons");
    }

    private static ObjectNode drum(ObjectNode brake) {
        boolean electric = brake.get("electricParkingBrake").booleanValue();
        brake.removeAll();
        return brake.put("electricParkingBrake", electric)
                .put("drumNew", "180 mm")
                .put("drumDiscard", "181 mm")
                .put("liningNew", "4 mm")
                .put("liningMinimum", "1 mm");
    }

    @Test
    void aMountingThatCannotBeReadIsRefused() {
        assertThatProblems(problems(car -> car.put("mounting", "five holes")))
                .containsExactly(tuple(
                        "/vehicle", "mounting is \"five holes\", expected as in 5x114.3 M14x1.5 cone 64.1 ET45 7.5J"));
    }

    private static AbstractListAssert<?, ?, Tuple, ?> assertThatProblems(List<Problem> problems) {
        return assertThat(problems).extracting(Problem::where, problem -> InEnglish.say(problem.message()));
    }

    private static List<Problem> problems(Consumer<ObjectNode> change) {
        var mapper = new JsonMapper();
        var file = (ObjectNode)
                mapper.readTree(VisitFile.write(DemoShop.histories(TODAY).getFirst()));
        change.accept(file.withObject("/vehicle"));
        return ((VisitFile.Refused) VisitFile.read(mapper.writeValueAsString(file), TODAY)).problems();
    }
}
