package cornerbook.app.desk.bench;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.bench.Questions;
import cornerbook.app.desk.Links;
import cornerbook.app.door.ServedShop;
import cornerbook.core.car.CarHistory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The bench with a car's own data: nothing in them is refused before anybody has typed anything. */
class BenchOfCarTest {
    private static final Pattern ERROR = Pattern.compile("(?<=class=\"error\")[^<]*");

    /** In the address of a page these two say which car, and whose units. */
    @Test
    void noQuestionBearsTheNameOfWhatAPageIsAskedFor() {
        assertThat(Questions.ALL)
                .flatExtracting(question -> question.asks())
                .extracting(ask -> ask.name())
                .doesNotContain("car", "units");
    }

    @Test
    void everyCalculatorTakesWhatTheBookKnowsOfEachCar(@TempDir Path folder) throws Exception {
        List<CarHistory> cars = ServedShop.cars();
        var refused = new ArrayList<String>();
        try (var shop = new ServedShop(folder, cars)) {
            for (var car : cars) {
                for (var question : Questions.ALL) {
                    for (var more : List.of("", "&axle=rear", "&units=us")) {
                        var address = Links.bench(question.name(), car.vehicle().id()) + more;
                        var answer = shop.get(address);
                        if (answer.statusCode() != 200) {
                            refused.add(address + ": "
                                    + ERROR.matcher(answer.body())
                                            .results()
                                            .map(MatchResult::group)
                                            .toList());
                        }
                    }
                }
            }
        }
        assertThat(refused).isEmpty();
    }
}
