package cornerbook.app.exchange;

import cornerbook.app.text.PlainText;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.core.season.Climate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.MappingIterator;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvReadFeature;
import tools.jackson.dataformat.csv.CsvSchema;

/**
 * The climate of a place as CSV (RFC 4180, UTF-8): a head line and a row for each month, January first. Place, source and
 * coldest morning stand in every row, so that each row can be read alone.
 */
public final class ClimateFile {
    private static final List<String> COLUMNS =
            List.of("place", "source", "coldest_morning_c", "month", "mean_daily_minimum_c", "mean_daily_maximum_c");

    private ClimateFile() {}

    /**
     * The climate of a text.
     *
     * @throws Refused with one sentence that names line and column of what does not fit
     */
    public static Climate parse(String csv) {
        var mapper = CsvMapper.builder().enable(CsvReadFeature.WRAP_AS_ARRAY).build();
        PlainText.findUnfitInLines(csv).ifPresent(unfit -> {
            throw new Refused(new FileSaid.ClimateUnfit(unfit));
        });
        var rows = new ArrayList<List<String>>();
        try (MappingIterator<String[]> lines = mapper.readerFor(String[].class).readValues(csv)) {
            lines.forEachRemaining(cells -> rows.add(List.of(cells)));
        } catch (JacksonException e) {
            throw new Refused(new FileSaid.ClimateNoCsv(PlainText.shown(String.valueOf(e.getOriginalMessage()))));
        }
        if (rows.isEmpty() || !rows.getFirst().equals(COLUMNS)) {
            throw new Refused(new FileSaid.ClimateHead(
                    PlainText.shown(rows.isEmpty() ? "" : String.join(",", rows.getFirst())),
                    String.join(",", COLUMNS)));
        }
        if (rows.size() != Month.values().length + 1) {
            throw new Refused(new FileSaid.ClimateRows(rows.size() - 1));
        }
        var first = rows.get(1);
        var months = new ArrayList<Climate.MonthNormal>();
        for (int line = 2; line <= rows.size(); line++) {
            months.add(month(line, rows.get(line - 1), first));
        }
        return new Climate(first.get(0), first.get(1), number(2, 2, first), months);
    }

    private static Climate.MonthNormal month(int line, List<String> cells, List<String> first) {
        if (cells.size() != COLUMNS.size()) {
            throw new Refused(new FileSaid.ClimateRow(line, cells.size(), COLUMNS.size()));
        }
        for (int column = 0; column < 3; column++) {
            if (!cells.get(column).equals(first.get(column))) {
                throw bad(line, column, cells, new FileSaid.AsInLine2(first.get(column)));
            }
        }
        var month = String.valueOf(line - 1);
        if (!cells.get(3).equals(month)) {
            throw bad(line, 3, cells, Said.verbatim(month));
        }
        double minimumC = number(line, 4, cells);
        double maximumC = number(line, 5, cells);
        try {
            return new Climate.MonthNormal(minimumC, maximumC);
        } catch (IllegalArgumentException e) {
            throw new Refused(new FileSaid.ClimateMonth(line, Refused.said(e)));
        }
    }

    private static double number(int line, int column, List<String> cells) {
        try {
            double number = Double.parseDouble(cells.get(column));
            if (Double.isFinite(number)) {
                return number;
            }
            throw bad(line, column, cells, new FileSaid.NumberOfDegrees());
        } catch (NumberFormatException e) {
            throw bad(line, column, cells, new FileSaid.NumberOfDegrees());
        }
    }

    private static Refused bad(int line, int column, List<String> cells, Said expected) {
        return new Refused(
                new FileSaid.ClimateCell(line, COLUMNS.get(column), PlainText.shown(cells.get(column)), expected));
    }

    /** The text of a climate; read again it is the same. */
    public static String write(Climate climate) {
        var schema = CsvSchema.builder()
                .addColumns(COLUMNS, CsvSchema.ColumnType.STRING)
                .build()
                .withHeader();
        var rows = new ArrayList<List<Object>>();
        for (var month : Month.values()) {
            var normal = climate.get(month);
            rows.add(List.of(
                    climate.place(),
                    climate.source(),
                    climate.coldestMorningC(),
                    month.getValue(),
                    normal.meanDailyMinimumC(),
                    normal.meanDailyMaximumC()));
        }
        return CsvMapper.builder().build().writer(schema).writeValueAsString(rows);
    }
}
