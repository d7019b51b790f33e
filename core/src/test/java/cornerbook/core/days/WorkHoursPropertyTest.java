package cornerbook.core.days;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.core.days.WorkHours.Span;
import cornerbook.core.say.Refused;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a day takes, against counting each of its minutes; and hours as they are written. */
class WorkHoursPropertyTest {
    private static final int MINUTES_OF_A_DAY = 1440;

    @Test
    void capacityIsWhatEachMinuteTakes() {
        var random = new Random(20_261_130);
        for (int i = 0; i < 300; i++) {
            var people = new ArrayList<WorkHours>();
            for (int person = random.nextInt(6); person > 0; person--) {
                people.add(draw(random));
            }
            int hoists = random.nextInt(4);
            int counted = 0;
            for (int minute = 0; minute < MINUTES_OF_A_DAY; minute++) {
                int atWork = 0;
                for (var hours : people) {
                    for (var span : hours.spans()) {
                        if (minute >= span.from() && minute < span.until()) {
                            atWork++;
                        }
                    }
                }
                counted += hoists == 0 ? atWork : Math.min(hoists, atWork);
            }
            assertThat(WorkHours.capacityMinutes(people, hoists)).isEqualTo(counted);
        }
    }

    @Test
    void whatIsWrittenIsReadAgain() {
        var random = new Random(5);
        for (int i = 0; i < 300; i++) {
            var hours = draw(random);
            assertThat(WorkHours.parse(hours.written())).isEqualTo(hours);
        }
        assertThat(WorkHours.parse(" 8:00 – 12:00 ,12:30-17:00").written()).isEqualTo("08:00-12:00, 12:30-17:00");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "all day",
                "8-17",
                "17:00-8:00",
                "8:00-8:00",
                "8:00-12:60",
                "25:00-26:00",
                "8:00-12:00,",
                "8:00-12:00, 11:00-13:00"
            })
    void whatIsNoHoursIsRefused(String typed) {
        assertThatThrownBy(() -> WorkHours.parse(typed)).isInstanceOf(Refused.class);
    }

    private static WorkHours draw(Random random) {
        var moments = new TreeSet<Integer>();
        int spans = random.nextInt(4);
        while (moments.size() < 2 * spans) {
            moments.add(random.nextInt(MINUTES_OF_A_DAY));
        }
        var drawn = new ArrayList<Span>();
        var sorted = List.copyOf(moments);
        for (int i = 0; i < sorted.size(); i += 2) {
            drawn.add(new Span(sorted.get(i), sorted.get(i + 1)));
        }
        return new WorkHours(drawn);
    }
}
