package cornerbook.app.bench;

import cornerbook.app.limits.LimitsFile;
import cornerbook.core.finding.Limit;
import cornerbook.core.season.Dates;
import cornerbook.core.tyre.AgeRule;
import cornerbook.core.tyre.Tin;
import cornerbook.core.tyre.TyreAge;
import cornerbook.core.tyre.judge.AgeRules;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Plant, week and age of a tyre from its identification number. */
final class TyreAgeGroup {
    private static final String HOUSE = "*";
    private static final List<Limit> LIMITS = LimitsFile.load();

    static final Group GROUP = new Group(
            "age",
            "Date and age",
            "The full number stands on one sidewall only; the other may lack the date.",
            List.of(
                    Ask.words(
                            "tin",
                            "TIN",
                            "DOT 1AB C2D EFH 3519",
                            "",
                            "Tyre identification number with or without DOT, or only its last four digits."),
                    Ask.choice(
                            "place",
                            "Place",
                            LIMITS.stream()
                                    .map(Limit::jurisdiction)
                                    .filter(code -> !code.equals(HOUSE))
                                    .distinct()
                                    .toList(),
                            "place",
                            "Whose age rule counts; that of the house if not given, or if the place has none.")),
            List.of("tin"),
            TyreAgeGroup::answer);

    private TyreAgeGroup() {}

    private static List<Part> answer(Given given) {
        if (!given.any("tin")) {
            return List.of();
        }
        var rule = AgeRules.of(
                LIMITS,
                given.findWords("place")
                        .map(word -> word.toUpperCase(Locale.ROOT))
                        .orElse(HOUSE));
        var age = given.reading("tin", text -> TyreAge.of(Tin.parse(text), given.today(), rule));
        return List.of(new Part("age", lines(age, rule), age));
    }

    private static List<String> lines(TyreAge age, AgeRule rule) {
        var lines = new ArrayList<String>();
        var code = age.tin().dateCode();
        var from = age.madeFrom();
        var to = age.madeTo();
        if (code == null || from == null || to == null) {
            lines.add("Made before 2000: over %.0f years old".formatted(Math.floor(age.ageYears())));
        } else {
            lines.add("Made in week %d of %d, %s to %s: %.1f years old"
                    .formatted(code.week(), code.year(), Dates.written(from), Dates.written(to), age.ageYears()));
        }
        var plant = age.plantCode();
        lines.add(plant == null ? "No plant code was read" : "Plant code %s".formatted(plant));
        lines.add(
                switch (age.answer()) {
                    case YOUNG -> "Young enough%s".formatted(when(", inspected from ", age.inspectFrom()));
                    case INSPECT -> "Inspected every year%s".formatted(when(", replaced by ", age.replaceBy()));
                    case REPLACE -> "Replace it: %.0f years are the most".formatted(rule.replaceYears());
                });
        return lines;
    }

    private static String when(String words, @Nullable LocalDate day) {
        return day == null ? "" : words + Dates.written(day);
    }
}
