package cornerbook.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.EmptyBook;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.assess.Assessor;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CarListsTest {
    private static final String THREAD = "car-lists";

    /** At whatever moment it comes, also while the background waits for more readings of a visit. */
    @ParameterizedTest
    @ValueSource(ints = {0, 20, 90, 150})
    void closingEndsWhatRunsInTheBackground(int afterMilliseconds, @TempDir Path folder) throws Exception {
        var before = running();
        try (var book = EmptyBook.open(folder)) {
            var learning = new Learning(book, new Assessor(LimitsFile.load()), Clock.systemUTC());
            try (var lists = new CarLists(book, learning, Clock.systemUTC())) {
                lists.start();
                Thread.sleep(afterMilliseconds);
            }
            assertThat(before).containsAll(running());
        }
    }

    private static Set<Thread> running() {
        return Thread.getAllStackTraces().keySet().stream()
                .filter(thread -> thread.getName().equals(THREAD))
                .collect(Collectors.toSet());
    }
}
