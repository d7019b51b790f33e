package cornerbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import com.ibm.icu.text.MessageFormat;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Messages against the formatter of the International Components for Unicode (ICU4J, com.ibm.icu.text.MessageFormat). */
class MessageReferenceTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Plain words",
                "{name} is due",
                "{n, plural, one {# reading} other {# readings}} of {name}",
                "{n, plural, =0 {nothing} one {# lecture} other {# lectures}}",
                "{n, plural, =1 {only {name}} other {# with {name}}}",
                "{kind, select, on {It goes on, {n, plural, one {once} other {# times}}} other {It comes off}}.",
                "It is the driver's {name}, isn't it?",
                "Quoted '{name}' stays, and ''two'' are one",
                "{kind, select, off {} other {x}}",
            })
    void fillsAsTheLibraryDoes(String text) {
        for (var locale : new Locale[] {Locale.CANADA, Locale.CANADA_FRENCH}) {
            for (long count : new long[] {0, 1, 2, 7, 999}) {
                for (var kind : new String[] {"on", "off"}) {
                    Map<String, Object> facts = Map.of("name", "Nadeau", "n", count, "kind", kind);
                    assertThat(new Message(text, locale).fill(of(facts)))
                            .isEqualTo(new MessageFormat(text, locale).format(facts));
                }
            }
        }
    }

    private static Message.Facts of(Map<String, Object> facts) {
        return new Message.Facts() {
            @Override
            public String words(String name) {
                return String.valueOf(facts.get(name));
            }

            @Override
            public long count(String name) {
                return facts.get(name) instanceof Long count ? count : -1;
            }

            @Override
            public String choice(String name) {
                return words(name);
            }
        };
    }
}
