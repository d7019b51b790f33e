package cornerbook.bench.handover;

import cornerbook.app.book.record.VisitNotes;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.limits.LimitsFile;
import cornerbook.app.sheet.HandoverSheet;
import cornerbook.app.sheet.Letterhead;
import cornerbook.core.assess.Assessment;
import cornerbook.core.assess.Assessor;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Customer;
import cornerbook.words.Reader;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The hand-over sheet of a car whose visit is finished, from its assessment to the bytes of the PDF. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class SheetBenchmark {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final Instant NOW = Instant.parse("2026-11-25T10:00:00Z");

    /** Invented customers; the second one needs the wide typeface too. */
    @Param({"Odile Marchenoir", "Жанна Щербёнок"})
    private String customer = "";

    @SuppressWarnings("NullAway.Init") // set before each run by JMH
    private Assessment assessment;

    /** Assesses the car beforehand. */
    @Setup
    public void assess() {
        var history = DemoShop.histories(TODAY).stream()
                .filter(car -> !car.visits().getLast().card().workDone().isEmpty())
                .findFirst()
                .orElseThrow();
        var owner = new Customer(history.customer().id(), customer, null, null);
        assessment = new Assessor(LimitsFile.load())
                .assess(
                        new CarHistory(history.vehicle(), owner, history.sets(), history.visits()),
                        history.visits().getLast().id());
    }

    /** The PDF. */
    @Benchmark
    public byte[] pdf() {
        return HandoverSheet.render(
                assessment, Letterhead.ofInvented(DemoShop.NAME), NOW, VisitNotes.NONE, List.of(), Reader.DEFAULT);
    }
}
