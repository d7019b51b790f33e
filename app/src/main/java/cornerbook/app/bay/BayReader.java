package cornerbook.app.bay;

import cornerbook.app.bay.BaySheet.Choice;
import cornerbook.app.bay.BaySheet.Expected;
import cornerbook.app.bay.BaySheet.Last;
import cornerbook.app.bay.BaySheet.Limit;
import cornerbook.app.desk.EntryUnits;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.car.WrittenReading;
import cornerbook.core.finding.ReadingLimit;
import cornerbook.core.finding.Verdict;
import cornerbook.core.release.OpenPoint;
import cornerbook.core.release.Release;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.words.Labels;
import cornerbook.words.Language;
import cornerbook.words.Reader;
import cornerbook.words.UnitSystem;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Writes a sheet in the language and the units of one person. */
record BayReader(Reader reader, EntryUnits entry) {
    private static final String ROOM = "app/bay";

    BayReader(Language language, UnitSystem units) {
        this(new Reader(language, units, ZoneOffset.UTC), new EntryUnits(units));
    }

    /** For everybody, by the tag of the language and the name of the units: who reads it next is not known while it is on a tablet. */
    static <T> Map<String, Map<String, T>> forAll(Function<BayReader, T> make) {
        var made = new LinkedHashMap<String, Map<String, T>>();
        for (var language : Language.values()) {
            made.put(language.tag(), forAllUnits(language, make));
        }
        return made;
    }

    /** What a field shows of a reading, by the name of the units: it has no words. */
    static Map<String, String> shownToAll(Reading reading) {
        return forAllUnits(Language.ENGLISH, bay -> bay.shown(reading));
    }

    private static <T> Map<String, T> forAllUnits(Language language, Function<BayReader, T> make) {
        var made = new LinkedHashMap<String, T>();
        for (var units : UnitSystem.values()) {
            made.put(units.word(), make.apply(new BayReader(language, units)));
        }
        return made;
    }

    Labels labels() {
        return reader.labels(ROOM);
    }

    String say(Said said) {
        return reader.say(said);
    }

    List<String> say(List<? extends Said> sentences) {
        return sentences.stream().map(reader::say).toList();
    }

    Last last(Reading reading, Visit visit) {
        var scale = reading.measure().scale();
        return new Last(scale == null ? shown(reading) : say(scale.told(reading.value())), reader.day(visit.date()));
    }

    /** What may be chosen of a measure, mildest first; nothing where a value is typed. */
    List<Choice> choices(Measure measure) {
        var scale = measure.scale();
        return scale == null
                ? List.of()
                : scale.told().stream()
                        .map(word -> new Choice(scale.wordOf(word.place()), say(word), scale.saysNotDone(word.place())))
                        .toList();
    }

    /** What stands beside the field of a measure; empty where a word is chosen. */
    String unit(Measure measure) {
        return entry.label(measure, reader);
    }

    /** Before the unit of its field: as it was written where that was in these units or are points around a disc, else its value in them. */
    private String shown(Reading reading) {
        var measure = reading.measure();
        var written = BayStates.written(reading);
        boolean theirs =
                measure.scale() != null || written.endsWith(entry.suffix(measure)) || arePoints(measure, written);
        return theirs ? entry.withoutUnit(written, measure) : entry.written(reading.value(), measure);
    }

    /** A book may have what an older program read, and this one would not. */
    private static boolean arePoints(Measure measure, String written) {
        try {
            return WrittenReading.findPoints(measure, written).isPresent();
        } catch (Refused e) {
            return false;
        }
    }

    Limit limit(ReadingLimit limit) {
        var measure = limit.measure();
        return new Limit(
                measure,
                limit.subject().corner(),
                limit.subject().wheelTag(),
                entry.number(limit.lowest(), measure),
                entry.number(limit.highest(), measure),
                limit.outside() == Verdict.UNSAFE,
                say(limit.sentence()),
                limit.endedBy(),
                Release.unsafe(limit).map(OpenPoint::key).orElse(null));
    }

    Expected expected(Measure measure, double mean, double within, Said asks) {
        return new Expected(
                entry.number(mean - within, measure), entry.number(mean + within, measure), reader.begin(asks));
    }
}
