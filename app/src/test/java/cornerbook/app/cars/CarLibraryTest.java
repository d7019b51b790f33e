package cornerbook.app.cars;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

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
        assertThat(names()).hasSizeGreaterThanOrEqualTo(60);
    }

    @ParameterizedTest
    @MethodSource("names")
    void whatIsExpectedIsSaid(String name) {
        var expected = CarLibrary.expected(name);
        assumeTrue(expected.waits() == null, expected.waits());
        assertThat(expected.differences(CarLibrary.assess(CarLibrary.car(CarLibrary.text(name)))))
                .as(expected.story())
                .isEmpty();
    }

    /** A car that waits no longer must say so. */
    @ParameterizedTest
    @MethodSource("names")
    void whatWaitsIsNotSaidYet(String name) {
        var expected = CarLibrary.expected(name);
        assumeTrue(expected.waits() != null, "it is said");
        assertThat(expected.differences(CarLibrary.assess(CarLibrary.car(CarLibrary.text(name)))))
                .as(expected.story())
                .isNotEmpty();
    }

    @ParameterizedTest
    @MethodSource("names")
    void whatMustNeverBeSaidIsNot(String name) {
        assertThat(NeverSaid.faults(CarLibrary.assess(CarLibrary.car(CarLibrary.text(name)))))
                .isEmpty();
    }
}
