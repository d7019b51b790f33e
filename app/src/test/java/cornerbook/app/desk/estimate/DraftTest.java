package cornerbook.app.desk.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.price.PriceList;
import cornerbook.app.door.ServedShop;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.assess.Advice;
import cornerbook.core.assess.Assessment;
import cornerbook.core.assess.Assessor;
import cornerbook.core.car.Visit;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.words.Reader;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The lines that an estimate may have, of all invented cars. */
class DraftTest {
    private static final PriceList NO_PRICES = new PriceList(ServedShop.TODAY, null, List.of());

    private static boolean isOfPair(Advice advice) {
        return advice.first().subject().part() == Subject.Part.BRAKE_PAIR;
    }

    private static boolean asksForBothSides(Advice advice) {
        return advice.todo()
                .filter(todo -> todo.action() == Todo.Action.REPLACE_PAIR)
                .isPresent();
    }

    private static List<Assessment> withBoth() {
        var assessor = new Assessor(LimitsFile.load());
        return ServedShop.cars().stream()
                .flatMap(car -> car.visits().stream().map(Visit::id).map(visit -> assessor.assess(car, visit)))
                .filter(assessed -> assessed.advice().stream().anyMatch(DraftTest::isOfPair))
                .filter(assessed ->
                        assessed.advice().stream().anyMatch(advice -> asksForBothSides(advice) && !isOfPair(advice)))
                .toList();
    }

    /** A worn pad asks for both sides of its axle, and so does the axle: the customer is offered that work once. */
    @Test
    void partsOfBothSidesAreOfferedOnce() {
        assertThat(withBoth())
                .isNotEmpty()
                .allSatisfy(assessed -> assertThat(Draft.of(assessed, NO_PRICES, null, Reader.DEFAULT))
                        .extracting(line -> line.line().key())
                        .noneMatch(key -> key.startsWith(Subject.Part.BRAKE_PAIR.name()))
                        .anyMatch(key -> key.endsWith(Todo.Action.REPLACE_PAIR.name())));
    }
}
