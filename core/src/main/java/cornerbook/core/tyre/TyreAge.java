package cornerbook.core.tyre;

import cornerbook.core.say.Said;
import cornerbook.core.tyre.TyreSaid.Caution;
import cornerbook.core.tyre.TyreSaid.Computed;
import cornerbook.core.tyre.TyreSaid.Origin;
import cornerbook.core.tyre.TyreSaid.Way;
import cornerbook.core.why.Basis;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.core.why.Step;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A tyre's plant, week and age as its TIN tells them (49 CFR 574.5), against the age rule of the place. Age counts from the
 * first day of the week of manufacture, in years of 365.25 days.
 *
 * @param plantCode null when only a date code was read
 * @param madeFrom first day of the week of manufacture; null for a tyre of before 2000, as the other dates
 * @param ageYears on the day asked; of a tyre of before 2000 the least that it can be
 */
public record TyreAge(
        Tin tin,
        @Nullable String plantCode,
        @Nullable LocalDate madeFrom,
        @Nullable LocalDate madeTo,
        double ageYears,
        @Nullable LocalDate inspectFrom,
        @Nullable LocalDate replaceBy,
        AgeRule rule,
        Answer answer,
        Explanation explanation)
        implements Explained {
    private static final DateCode FIRST_OF_FOUR_DIGITS = new DateCode(1, 2000);

    /** What the rule says on the day. */
    public enum Answer {
        YOUNG,
        INSPECT,
        REPLACE
    }

    /**
     * The age on a day.
     *
     * @throws IllegalArgumentException with one sentence when the tyre was made after the day
     */
    public static TyreAge of(Tin tin, LocalDate day, AgeRule rule) {
        var code = tin.dateCode();
        double years = (code == null ? FIRST_OF_FOUR_DIGITS : code).ageYears(day);
        var answer = code == null || years >= rule.replaceYears()
                ? Answer.REPLACE
                : years >= rule.inspectYears() ? Answer.INSPECT : Answer.YOUNG;
        var steps = new ArrayList<Step>();
        if (code == null) {
            steps.add(new Step(Computed.LEAST_AGE, Way.THREE_DIGITS, years, "years", Origin.FOUR_DIGITS_SINCE_2000));
        } else {
            steps.add(new Step(
                    Computed.WEEK_OF_MANUFACTURE,
                    new TyreSaid.WeekOfYear(code.toString(), code.week(), String.valueOf(code.year())),
                    code.week(),
                    "",
                    Origin.DATE_CODE));
            steps.add(new Step(
                    Computed.AGE, new TyreSaid.DaysBetween(code.dated(), day), years, "years", Origin.CALENDAR));
        }
        steps.add(new Step(Computed.INSPECTED_FROM, Basis.GIVEN, rule.inspectYears(), "years", rule.inspectSource()));
        steps.add(new Step(Computed.REPLACED_AT, Basis.GIVEN, rule.replaceYears(), "years", rule.replaceSource()));
        return new TyreAge(
                tin,
                tin.plantCode().orElse(null),
                code == null ? null : code.dated(),
                code == null ? null : code.dated().plusDays(6),
                years,
                code == null ? null : code.reaches(rule.inspectYears()),
                code == null ? null : code.reaches(rule.replaceYears()),
                rule,
                answer,
                new Explanation(cautions(tin, answer), steps));
    }

    private static List<Said> cautions(Tin tin, Answer answer) {
        var cautions = new ArrayList<Said>();
        if (answer == Answer.REPLACE) {
            cautions.add(Caution.REPLACE);
        } else if (answer == Answer.INSPECT) {
            cautions.add(Caution.LOOK_FOR_CRACKS);
        }
        if (tin.madeBefore2000()) {
            cautions.add(Caution.MADE_BEFORE_2000);
        }
        var unusual = tin.unusualLetters();
        if (!unusual.isEmpty()) {
            cautions.add(new TyreSaid.UnusualLetters(unusual));
        }
        return cautions;
    }
}
