package cornerbook.app.desk.customer;

import cornerbook.core.finding.Citation;
import cornerbook.core.say.Said;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Objects;
import tools.jackson.databind.MappingIterator;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvSchema;

/**
 * How long a shop keeps who its customers were, by the file that the program brings along.
 *
 * @param years after the last visit, whole
 * @param citation the law or practice that it comes from
 */
public record Retention(int years, Said citation) {
    private static final String RESOURCE = "retention.csv";
    private static final String ANYWHERE = "*";
    private static final CsvMapper CSV = new CsvMapper();

    /**
     * The rule of a place.
     *
     * @param place its code, as CA-QC: the country counts
     */
    static Retention at(String place) {
        Retention house = null;
        try (InputStream file = Objects.requireNonNull(Retention.class.getResourceAsStream(RESOURCE), RESOURCE);
                MappingIterator<Map<String, String>> rows = CSV.readerFor(Map.class)
                        .with(CsvSchema.emptySchema().withHeader())
                        .readValues(file)) {
            while (rows.hasNext()) {
                var row = rows.next();
                var country = Objects.requireNonNull(row.get("country"));
                if (country.equals(place.replaceFirst("-.*", ""))) {
                    return of(row);
                }
                if (country.equals(ANYWHERE)) {
                    house = of(row);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Objects.requireNonNull(house, RESOURCE);
    }

    private static Retention of(Map<String, String> row) {
        return new Retention(
                Integer.parseInt(Objects.requireNonNull(row.get("years"))),
                new Citation(
                        Objects.requireNonNull(row.get("citation")),
                        Objects.requireNonNull(row.get("citation in French"))));
    }
}
