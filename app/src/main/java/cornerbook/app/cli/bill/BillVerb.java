package cornerbook.app.cli.bill;

import cornerbook.app.book.Book;
import cornerbook.app.book.store.BookException;
import cornerbook.app.cli.arguments.LetterheadOptions;
import cornerbook.app.cli.print.Terminal;
import cornerbook.app.desk.bill.BillSaid;
import cornerbook.app.desk.bill.InvoiceFile;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.function.Supplier;
import picocli.CommandLine;

/** Prints a bill or a credit note as a structured invoice. */
@CommandLine.Command(name = "bill", description = "verb-bill")
public final class BillVerb implements Runnable {
    private final Terminal terminal;
    private final Supplier<Book> open;

    @CommandLine.Parameters(paramLabel = "${bundle:label-count}", descriptionKey = "param-bill")
    private int number;

    @CommandLine.Mixin
    private LetterheadOptions shop = new LetterheadOptions();

    /**
     * The verb on a book.
     *
     * @param open opens it when the verb runs
     */
    public BillVerb(Terminal terminal, Supplier<Book> open) {
        this.terminal = terminal;
        this.open = open;
    }

    @Override
    public void run() {
        var zone = ZoneId.systemDefault();
        try (var book = open.get()) {
            var bill = book.bills().find(number).orElseThrow(() -> new BookException(new BillSaid.NoBill()));
            var file = InvoiceFile.of(
                    book,
                    bill,
                    book.cars().findOfVisit(bill.visitId()).orElseThrow(),
                    shop.letterhead(),
                    LocalDate.now(zone),
                    terminal.reader().at(zone));
            terminal.out().println(new String(file, StandardCharsets.UTF_8));
        }
    }
}
