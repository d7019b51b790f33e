package cornerbook.app.cars;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.abort;

import cornerbook.app.exchange.VisitFile;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Of each car of the library is said what a technician expects, and nothing that must never be said. */
class CarLibraryTest {
    static List<String> names() {
        return CarLibrary.names();
    }

    @Test
    void theLibraryIsLarge() {
        assertThat(CarLibrary.namesOfToday()).hasSizeGreaterThanOrEqualTo(60);
    }

    @ParameterizedTest
    @MethodSource("names")
    void whatIsExpectedIsSaidAndWhatMustNeverBeIsNot(String name) {
        var expected = CarLibrary.expected(name);
        if (expected.waits() == null) {
            var assessment = CarLibrary.assess(CarLibrary.car(CarLibrary.text(name)));
            assertThat(expected.differences(assessment)).as(expected.story()).isEmpty();
            assertThat(NeverSaid.faults(assessment)).as(expected.story()).isEmpty();
        } else if (isSaid(name, expected)) {
            assertThat(expected.waits())
                    .as("it waits no longer; strike the line")
                    .isNull();
        } else {
            abort(expected.waits());
        }
    }

    private static boolean isSaid(String name, ExpectedCar expected) {
        return CarLibrary.result(CarLibrary.text(name)) instanceof VisitFile.Read read
                && expected.differences(CarLibrary.assess(read.history())).isEmpty();
    }
}
