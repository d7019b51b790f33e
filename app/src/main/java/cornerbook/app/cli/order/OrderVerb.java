package cornerbook.app.cli.order;

import cornerbook.app.book.Book;
import cornerbook.app.book.order.OrderList;
import cornerbook.app.cli.print.Terminal;
import cornerbook.app.desk.CarLists;
import cornerbook.app.desk.Learning;
import cornerbook.app.desk.order.OrderCsv;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.assess.Assessor;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** Prints what to order for the cars that are due, as comma-separated values; cars that are not judged as they are now are judged first. */
@CommandLine.Command(name = "order", description = "verb-order")
public final class OrderVerb implements Runnable {
    private static final double HUNDRED = 100;

    private final Terminal terminal;
    private final Supplier<Book> open;

    @CommandLine.Option(
            names = "--level",
            paramLabel = "${bundle:label-count}",
            defaultValue = "90",
            converter = Percent.class,
            descriptionKey = "option-order-level")
    private int levelPercent;

    @CommandLine.Option(names = "--until", paramLabel = "${bundle:label-day}", descriptionKey = "option-order-until")
    private @Nullable LocalDate until;

    /**
     * The verb on a book.
     *
     * @param open opens it when the verb runs
     */
    public OrderVerb(Terminal terminal, Supplier<Book> open) {
        this.terminal = terminal;
        this.open = open;
    }

    /** A chance from 50 to 99 per cent. */
    static final class Percent implements CommandLine.ITypeConverter<Integer> {
        @Override
        public Integer convert(String text) {
            if (!text.matches("[5-9]\\d")) {
                throw new CommandLine.TypeConversionException(text);
            }
            return Integer.valueOf(text);
        }
    }

    @Override
    public void run() {
        var clock = Clock.system(ZoneId.systemDefault());
        var today = LocalDate.now(clock);
        try (var book = open.get()) {
            var learning = new Learning(book, new Assessor(LimitsFile.load()), clock);
            new CarLists(book, learning, clock).judgeOld();
            var last = until;
            terminal.out()
                    .print(OrderCsv.of(
                            OrderList.of(
                                    book.orders(),
                                    today,
                                    last == null
                                            ? OrderList.usualUntil(
                                                    today, book.climate().find())
                                            : last,
                                    levelPercent / HUNDRED),
                            terminal.reader()));
        }
    }
}
