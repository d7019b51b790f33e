package cornerbook.app.cli.order;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.EmptyBook;
import cornerbook.app.cli.print.Terminal;
import cornerbook.app.demo.DemoShop;
import cornerbook.words.Reader;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvReadFeature;

/** What a general CSV reader (Jackson) finds in the list. The shop is invented. */
class OrderVerbTest {
    @TempDir
    private Path folder;

    private String run(int exitCode, String... arguments) {
        var out = new StringWriter();
        var verb = new OrderVerb(new Terminal(Reader.DEFAULT, new PrintWriter(out)), () -> EmptyBook.open(folder));
        assertThat(new CommandLine(verb)
                        .setErr(new PrintWriter(new StringWriter()))
                        .execute(arguments))
                .isEqualTo(exitCode);
        return out.toString();
    }

    private List<String[]> rows(String csv) throws Exception {
        return new CsvMapper()
                .readerFor(String[].class)
                .with(CsvReadFeature.WRAP_AS_ARRAY)
                .<String[]>readValues(csv)
                .readAll();
    }

    @Test
    void aRowForEachArticle() throws Exception {
        try (var book = EmptyBook.open(folder)) {
            book.records().addCars(DemoShop.histories(LocalDate.now(ZoneId.systemDefault())));
        }
        var csv = run(0, "--level", "50");
        assertThat(csv).contains("\r\n");
        var rows = rows(csv);
        assertThat(rows.getFirst()).startsWith("part", "article").hasSize(8);
        assertThat(rows).hasSizeGreaterThan(2).allSatisfy(row -> assertThat(row).hasSize(8));
        assertThat(rows).anySatisfy(row -> assertThat(row).startsWith("tyres", "tyres, summer, 235/50R19"));
        assertThat(rows(run(0, "--level", "99")).size()).isGreaterThanOrEqualTo(rows.size());
    }

    @Test
    void anEmptyBookHasNoRow() throws Exception {
        assertThat(rows(run(0))).hasSize(1);
    }

    @Test
    void noChanceIsWrongUse() {
        for (var level : List.of("49", "100", "ninety", "-1")) {
            run(CommandLine.ExitCode.USAGE, "--level", level);
        }
        run(CommandLine.ExitCode.USAGE, "--until", "soon");
    }
}
