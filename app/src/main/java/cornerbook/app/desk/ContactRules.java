package cornerbook.app.desk;

import cornerbook.core.coming.Channel;
import cornerbook.core.coming.ContactRule;
import cornerbook.core.coming.Purpose;
import cornerbook.core.finding.Citation;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.MappingIterator;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvSchema;

/** Whether customers may be reached, by the file that the program brings along: what a country has of its own goes before the rest. */
public final class ContactRules {
    private static final String RESOURCE = "contact-rules.csv";
    private static final String ALL = "*";
    private static final CsvMapper CSV = new CsvMapper();
    private static final List<Row> ROWS = rows();

    private final String country;

    private ContactRules(String country) {
        this.country = country;
    }

    /**
     * The rules of a place.
     *
     * @param place its code, as CA-QC: the country counts
     */
    public static ContactRules at(String place) {
        return new ContactRules(place.replaceFirst("-.*", ""));
    }

    private record Row(List<String> places, Purpose purpose, List<String> channels, ContactRule rule) {
        boolean isOf(String place, Purpose asked, Channel channel) {
            return places.contains(place)
                    && purpose == asked
                    && (channels.contains(ALL) || channels.contains(channel.name()));
        }
    }

    /** The rule for a purpose and a way. */
    public ContactRule get(Purpose purpose, Channel channel) {
        return Stream.of(country, ALL)
                .flatMap(place -> ROWS.stream().filter(row -> row.isOf(place, purpose, channel)))
                .map(Row::rule)
                .findFirst()
                .orElseThrow();
    }

    private static List<Row> rows() {
        var read = new ArrayList<Row>();
        try (InputStream file = Objects.requireNonNull(ContactRules.class.getResourceAsStream(RESOURCE), RESOURCE);
                MappingIterator<Map<String, String>> rows = CSV.readerFor(Map.class)
                        .with(CsvSchema.emptySchema().withHeader())
                        .readValues(file)) {
            while (rows.hasNext()) {
                var row = rows.next();
                read.add(new Row(
                        List.of(column(row, "places").split("\\|", -1)),
                        Purpose.valueOf(column(row, "purpose")),
                        List.of(column(row, "channels").split("\\|", -1)),
                        new ContactRule(
                                months(column(row, "months after the last visit")),
                                new Citation(column(row, "citation"), column(row, "citation in French")))));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return List.copyOf(read);
    }

    private static String column(Map<String, String> row, String name) {
        return Objects.requireNonNull(row.get(name), name);
    }

    private static @Nullable Integer months(String text) {
        return text.isEmpty() ? null : Integer.valueOf(text);
    }
}
