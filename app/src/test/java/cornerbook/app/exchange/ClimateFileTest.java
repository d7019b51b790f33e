package cornerbook.app.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;

import cornerbook.app.InEnglish;
import cornerbook.app.book.Book;
import cornerbook.app.book.EmptyBook;
import cornerbook.app.demo.DemoShop;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ClimateFileTest {
    private static final String TEXT = ClimateFile.write(DemoShop.climate());

    @Test
    void whatIsWrittenIsReadAgain() {
        assertThat(ClimateFile.parse(TEXT)).isEqualTo(DemoShop.climate());
        assertThat(TEXT)
                .startsWith(
                        "place,source,coldest_morning_c,month,mean_daily_minimum_c,mean_daily_maximum_c\nVal-Ombrelune,")
                .contains("\"invented, no place has these normals\"");
    }

    @Test
    void whatCannotBeIsRefusedWithLineAndColumn() {
        assertThatThrownBy(() -> ClimateFile.parse(""))
                .extracting(InEnglish::told, STRING)
                .contains("line 1, head");
        assertThatThrownBy(() -> ClimateFile.parse(TEXT.replace("month,", "moon,")))
                .extracting(InEnglish::told, STRING)
                .contains("line 1, head");
        assertThatThrownBy(() -> ClimateFile.parse(TEXT.replaceFirst("\n[^\n]*\n$", "\n")))
                .extracting(InEnglish::told, STRING)
                .isEqualTo("climate file has 11 rows below its head, expected one for each month");
        assertThatThrownBy(() -> ClimateFile.parse(TEXT.replace(",7,14.0,", ",7,warm,")))
                .extracting(InEnglish::told, STRING)
                .isEqualTo("climate file line 8, mean_daily_minimum_c: \"warm\", expected a number of °C");
        assertThatThrownBy(() -> ClimateFile.parse(TEXT.replace(",7,14.0,", ",7,-1e999,")))
                .extracting(InEnglish::told, STRING)
                .isEqualTo("climate file line 8, mean_daily_minimum_c: \"-1e999\", expected a number of °C");
        assertThatThrownBy(() -> ClimateFile.parse(TEXT.replace(",7,14.0,", ",8,14.0,")))
                .extracting(InEnglish::told, STRING)
                .isEqualTo("climate file line 8, month: \"8\", expected 7");
        assertThatThrownBy(() -> ClimateFile.parse(TEXT.replace(",7,14.0,", ",7,26,")))
                .extracting(InEnglish::told, STRING)
                .isEqualTo("climate file line 8: mean daily maximum is 25 °C, expected 26 to 55 °C");
    }

    @Test
    void aClimateIsKeptReplacedBackedUpAndRemoved(@TempDir Path folder) {
        var backup = folder.resolve("backup.db");
        try (var book = EmptyBook.open(folder.resolve("one"))) {
            assertThat(book.climate().find()).isEmpty();
            book.climate().put(DemoShop.climate());
            book.climate().put(DemoShop.climate());
            book.backup(backup);
            book.climate().remove();
            assertThat(book.climate().find()).isEmpty();
        }
        Book.restore(backup, folder.resolve("two"));
        try (var book = EmptyBook.open(folder.resolve("two"))) {
            assertThat(book.climate().find()).contains(DemoShop.climate());
            assertThat(book.check()).isEmpty();
        }
    }
}
