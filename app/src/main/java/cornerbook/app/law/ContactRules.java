package cornerbook.app.law;

import cornerbook.core.coming.Channel;
import cornerbook.core.coming.ContactRule;
import cornerbook.core.coming.Purpose;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Whether customers may be reached, by the file that the program brings along: what a country has of its own goes before the rest. */
public final class ContactRules {
    private static final String RESOURCE = "contact-rules.csv";
    private static final String ALL = "*";
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
        return LawFile.rows(RESOURCE).stream()
                .map(row -> new Row(
                        List.of(LawFile.cell(row, "places").split("\\|", -1)),
                        Purpose.valueOf(LawFile.cell(row, "purpose")),
                        List.of(LawFile.cell(row, "channels").split("\\|", -1)),
                        new ContactRule(
                                months(LawFile.cell(row, "months after the last visit")),
                                LawFile.citation(row, "citation"))))
                .toList();
    }

    private static @Nullable Integer months(String text) {
        return text.isEmpty() ? null : Integer.valueOf(text);
    }
}
