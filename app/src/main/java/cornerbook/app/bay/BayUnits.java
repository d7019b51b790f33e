package cornerbook.app.bay;

import cornerbook.app.bay.BaySheet.Expected;
import cornerbook.app.bay.BaySheet.Last;
import cornerbook.app.desk.EntryUnits;
import cornerbook.app.desk.Words;
import cornerbook.app.unit.QuantityText;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.words.UnitSystem;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Writes a sheet in the units of one person. */
record BayUnits(EntryUnits entry) {
    private static final List<BayUnits> ALL =
            Arrays.stream(UnitSystem.values()).map(BayUnits::of).toList();

    /** In the units of everybody: by the name of the units, as {@link #shown} has it. */
    static Map<String, String> shownToAll(Reading reading) {
        return ALL.stream().collect(Collectors.toMap(units -> units.system().word(), units -> units.shown(reading)));
    }

    /** A sentence in the units of everybody. */
    static Map<String, String> saidToAll(String metric) {
        return ALL.stream().collect(Collectors.toMap(units -> units.system().word(), units -> units.sentence(metric)));
    }

    static BayUnits of(UnitSystem system) {
        return new BayUnits(new EntryUnits(system));
    }

    UnitSystem system() {
        return entry.system();
    }

    String sentence(String metric) {
        return QuantityText.sentence(metric, system());
    }

    Last last(Reading reading, Visit visit) {
        return new Last(shown(reading), Words.day(visit.date()));
    }

    /** Before the unit of its field: as it was written where that was in these units, else its value in them. */
    String shown(Reading reading) {
        var measure = reading.measure();
        var written = BayStates.shown(reading);
        boolean theirs = measure.scale() != null || written.endsWith(entry.suffix(measure));
        return theirs ? entry.withoutUnit(written, measure) : entry.written(reading.value(), measure);
    }

    Expected expected(Measure measure, double mean, double within, String asks) {
        return new Expected(
                entry.number(mean - within, measure),
                entry.number(mean + within, measure),
                sentence(Words.sentenceStart(asks)));
    }
}
