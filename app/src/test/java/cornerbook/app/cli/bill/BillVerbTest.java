package cornerbook.app.cli.bill;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.EmptyBook;
import cornerbook.app.book.bill.AgreedWork;
import cornerbook.app.book.store.BookException;
import cornerbook.app.cli.print.Terminal;
import cornerbook.app.demo.DemoShop;
import cornerbook.words.Reader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.xml.sax.InputSource;
import picocli.CommandLine;

/** A bill for other programs, as the parser of the JDK reads it. The shop is invented. */
class BillVerbTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter told = new StringWriter();

    private int run(String... arguments) {
        return new CommandLine(
                        new BillVerb(new Terminal(Reader.DEFAULT, new PrintWriter(out)), () -> EmptyBook.open(folder)))
                .setErr(new PrintWriter(new StringWriter()))
                .setExecutionExceptionHandler((exception, line, parsed) -> {
                    told.write(Reader.DEFAULT.say(((BookException) exception).said()));
                    return 4;
                })
                .execute(arguments);
    }

    @Test
    void itIsPrintedOrRefusedInOneSentence() throws Exception {
        try (var book = EmptyBook.open(folder)) {
            book.records().addCars(DemoShop.histories(TODAY));
            AgreedWork.agree(book, "demo-08-v7", "CA-ON", Map.of("Pads", "100.00"));
            AgreedWork.bill(book, "demo-08-v7");
        }
        assertThat(run("1", "--shop", "Corner & Co")).isZero();
        var root = DocumentBuilderFactory.newDefaultNSInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(out.toString())))
                .getDocumentElement();
        assertThat(root.getLocalName()).isEqualTo("Invoice");
        assertThat(root.getTextContent()).contains("Corner & Co", "113.00");

        assertThat(run("1")).isEqualTo(4);
        assertThat(run("2", "--shop", "Corner & Co")).isEqualTo(4);
        assertThat(told.toString()).contains("names the shop", "no such bill");
        assertThat(run("one")).isEqualTo(CommandLine.ExitCode.USAGE);
    }
}
