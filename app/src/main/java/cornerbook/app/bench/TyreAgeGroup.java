package cornerbook.app.bench;

import cornerbook.app.bench.AskSaid.Help;
import cornerbook.app.bench.AskSaid.Label;
import cornerbook.app.bench.AskSaid.Note;
import cornerbook.app.bench.AskSaid.Title;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.finding.Limit;
import cornerbook.core.finding.LimitTable;
import cornerbook.core.finding.PlaceOfLaw;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import cornerbook.core.tyre.AgeRule;
import cornerbook.core.tyre.Tin;
import cornerbook.core.tyre.TyreAge;
import cornerbook.core.tyre.judge.AgeRules;
import java.util.List;
import java.util.Locale;

/** Plant, week and age of a tyre from its identification number. */
final class TyreAgeGroup {
    private static final String HOUSE = "*";
    private static final List<Limit> LIMITS = LimitsFile.load();

    static final Group GROUP = new Group(
            "age",
            Title.TYRE_AGE,
            Note.TYRE_AGE,
            List.of(
                    Ask.words(
                            "tin", Label.TYRE_TIN,
                            "DOT 1AB C2D EFH 3519", Help.TYRE_TIN),
                    Ask.choice(
                            "place",
                            Label.TYRE_PLACE,
                            new LimitTable(LIMITS)
                                    .places().stream()
                                            .map(code -> new Ask.Option(code, PlaceOfLaw.of(code)))
                                            .toList(),
                            Help.TYRE_PLACE)),
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

    private static List<Said> lines(TyreAge age, AgeRule rule) {
        var code = age.tin().dateCode();
        var from = age.madeFrom();
        var to = age.madeTo();
        return List.of(
                code == null || from == null || to == null
                        ? new AnswerSaid.MadeBefore2000((int) age.ageYears())
                        : new AnswerSaid.MadeIn(
                                code.week(), String.valueOf(code.year()), from, to, new Amount(age.ageYears(), "", 1)),
                new AnswerSaid.Plant(age.plantCode()),
                new AnswerSaid.AgeAsks(
                        age.answer(),
                        switch (age.answer()) {
                            case YOUNG -> age.inspectFrom();
                            case INSPECT -> age.replaceBy();
                            case REPLACE -> null;
                        },
                        (int) Math.round(rule.replaceYears())));
    }
}
