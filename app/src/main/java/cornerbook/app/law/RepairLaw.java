package cornerbook.app.law;

import cornerbook.core.finding.Citation;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What a place asks of who repairs cars for consumers.
 *
 * @param mostOverPercent by how much a bill may exceed its estimate without another agreement
 * @param estimate where that comes from
 * @param writtenAbove the amount, with parts and labour, above which an estimate has to be in writing; null where no law on file says so
 * @param written where that comes from
 * @param spoken where it comes from that an agreement by telephone counts with name, moment and the number alone; null where no law
 *     on file says so
 * @param warranty null where no law on file gives one
 */
public record RepairLaw(
        BigDecimal mostOverPercent,
        Citation estimate,
        @Nullable BigDecimal writtenAbove,
        Citation written,
        @Nullable Citation spoken,
        @Nullable Warranty warranty) {
    private static final String ANYWHERE = "*";
    private static final List<Map<String, String>> ROWS = LawFile.rows("repairs.csv");

    /**
     * How long a repair is guaranteed, whichever comes first.
     *
     * @param lasts from the day of the bill
     * @param km from the odometer of the bill
     */
    public record Warranty(Period lasts, int km, Citation citation) {
        public LocalDate until(LocalDate day) {
            return day.plus(lasts);
        }
    }

    /** The rules of a place; where none is on file, nothing goes beyond what was agreed. */
    public static RepairLaw of(String place) {
        return ROWS.stream()
                .filter(row -> place.equals(row.get("place")))
                .findFirst()
                .or(() -> ROWS.stream()
                        .filter(row -> ANYWHERE.equals(row.get("place")))
                        .findFirst())
                .map(RepairLaw::of)
                .orElseThrow();
    }

    /** The guarantees of all places that have one on file, by the place's code. */
    public static Map<String, Warranty> warranties() {
        var all = new TreeMap<String, Warranty>();
        for (var row : ROWS) {
            var warranty = of(row).warranty();
            if (warranty != null) {
                all.put(LawFile.cell(row, "place"), warranty);
            }
        }
        return all;
    }

    private static RepairLaw of(Map<String, String> row) {
        var lasts = LawFile.cell(row, "warranty");
        var above = LawFile.cell(row, "written above");
        return new RepairLaw(
                new BigDecimal(LawFile.cell(row, "over percent")),
                LawFile.citation(row, "estimate"),
                above.isEmpty() ? null : new BigDecimal(above),
                LawFile.citation(row, "written"),
                LawFile.cell(row, "spoken").isEmpty() ? null : LawFile.citation(row, "spoken"),
                lasts.isEmpty()
                        ? null
                        : new Warranty(
                                Period.parse(lasts),
                                Integer.parseInt(LawFile.cell(row, "warranty km")),
                                LawFile.citation(row, "warranty citation")));
    }
}
