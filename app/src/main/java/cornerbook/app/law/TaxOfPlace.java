package cornerbook.app.law;

import cornerbook.core.finding.Citation;
import cornerbook.core.price.Tax;
import cornerbook.core.price.TaxCode;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;

/**
 * A tax that a place has from a day on.
 *
 * @param place ISO 3166-2, as CA-QC
 * @param from the rows of a place that begin on one day are all its taxes until others begin
 */
public record TaxOfPlace(String place, LocalDate from, TaxCode code, BigDecimal percent, Citation citation) {
    private static final List<TaxOfPlace> ALL = LawFile.rows("taxes.csv").stream()
            .map(row -> new TaxOfPlace(
                    LawFile.cell(row, "place"),
                    LocalDate.parse(LawFile.cell(row, "from")),
                    TaxCode.valueOf(LawFile.cell(row, "tax")),
                    new BigDecimal(LawFile.cell(row, "percent")),
                    LawFile.citation(row, "citation")))
            .toList();

    /** The taxes of a place on a day, in the order in which papers name them; none where nothing is on file. */
    public static List<TaxOfPlace> of(String place, LocalDate day) {
        return ALL.stream()
                .filter(each -> each.place.equals(place) && !each.from.isAfter(day))
                .map(TaxOfPlace::from)
                .max(LocalDate::compareTo)
                .map(begun -> ALL.stream()
                        .filter(each -> each.place.equals(place) && each.from.equals(begun))
                        .toList())
                .orElse(List.of());
    }

    /** The places that have taxes on file. */
    public static List<String> places() {
        return ALL.stream().map(TaxOfPlace::place).distinct().sorted().toList();
    }

    public Tax tax() {
        return new Tax(code, percent);
    }
}
