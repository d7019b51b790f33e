package cornerbook.core.tyre;

import cornerbook.core.say.Said;

import cornerbook.core.why.Explained;
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
        List<Said> cautions,
        List<Step> steps)
        implements Explained {
    private static final DateCode FIRST_OF_FOUR_DIGITS = new DateCode(1, 2000);
    private static final String DATE_CODE = "49 CFR 574.5: week and year are the last four digits";

    public TyreAge {
        cautions = List.copyOf(cautions);
        steps = List.copyOf(steps);
    }

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
            steps.add(new Step(
                    "least age",
                    "three digits: made before 2000",
                    years,
                    "years",
                    "64 FR 36807: four digits since 2000"));
        } else {
            steps.add(new Step("week of manufacture", code.toString(), code.week(), "", DATE_CODE));
            steps.add(new Step("year of manufacture", code.toString(), code.year(), "", DATE_CODE));
            steps.add(new Step(
                    "age", "days from %s to %s / 365.25".formatted(code.dated(), day), years, "years", "calendar"));
        }
        steps.add(new Step("inspected from", "given", rule.inspectYears(), "years", rule.inspectSource()));
        steps.add(new Step("replaced at", "given", rule.replaceYears(), "years", rule.replaceSource()));
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
                cautions(tin, answer),
                steps);
    }

    private static List<Said> cautions(Tin tin, Answer answer) {
        var cautions = new ArrayList<Said>();
        if (answer == Answer.REPLACE) {
            cautions.add(Said.verbatim("Rubber ages: replace this tyre, whatever tread is left."));
        } else if (answer == Answer.INSPECT) {
            cautions.add(Said.verbatim("Look at this tyre for cracks in sidewall and grooves every year."));
        }
        if (tin.madeBefore2000()) {
            cautions.add(Said.verbatim("Three digits are a date of before 2000: read the number again on the other sidewall."));
        }
        var unusual = tin.unusualLetters();
        if (!unusual.isEmpty()) {
            cautions.add(Said.verbatim("The number has %s, which no TIN uses: read it again.".formatted(unusual)));
        }
        return cautions;
    }
}
