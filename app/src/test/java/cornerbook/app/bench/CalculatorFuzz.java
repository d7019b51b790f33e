package cornerbook.app.bench;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.InEnglish;
import cornerbook.app.bench.filled.WorkedExample;
import cornerbook.app.door.ServedShop;
import cornerbook.app.fuzz.FuzzTarget;
import cornerbook.app.fuzz.Input;
import cornerbook.app.fuzz.Sentences;
import cornerbook.words.Language;
import cornerbook.words.Reader;
import cornerbook.words.UnitSystem;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A calculator answers in sentences with finite numbers, or refuses with a sentence. The first line names the calculator,
 * whose worked example is changed: each line after it is the name of a question and, behind a blank, what a person answers.
 * Nothing behind it takes the answer away.
 */
public final class CalculatorFuzz implements FuzzTarget {
    @Override
    public void take(byte[] input) {
        var whole = new Input(input);
        var names = Questions.ALL.stream().map(Question::name).toList();
        var question = Questions.find(whole.choose(names)).orElseThrow();
        for (var system : UnitSystem.values()) {
            var typed = new HashMap<>(WorkedExample.of(question, system, ServedShop.TODAY));
            new Input(whole.rest()).lines().forEach(line -> answer(line, question, typed));
            check(new Given(question, typed, system, true, ServedShop.TODAY, null), whole.text());
        }
    }

    private static void answer(String line, Question question, Map<String, List<String>> typed) {
        int blank = line.indexOf(' ');
        var written = blank < 0 ? line : line.substring(0, blank);
        var names = question.asks().stream().map(Ask::name).toList();
        var name = names.contains(written) ? written : names.get(Math.floorMod(written.hashCode(), names.size()));
        typed.put(name, blank < 0 ? List.of() : List.of(line.substring(blank + 1)));
    }

    private static void check(Given given, String text) {
        try {
            for (var part : given.question().answer(given)) {
                assertThat(part.lines()).isNotEmpty();
                assertThat(part.toString()).doesNotContain("NaN", "Infinity");
                for (var language : Language.values()) {
                    part.lines().forEach(Reader.DEFAULT.in(language)::say);
                }
            }
        } catch (AskException e) {
            Sentences.check(Reader.DEFAULT.say(e.said()), text);
        } catch (IllegalArgumentException e) {
            Sentences.check(InEnglish.told(e), text);
        }
        for (var group : given.question().groups()) {
            given.question().lacking(group, given);
        }
    }
}
