package cornerbook.words;

import com.ibm.icu.text.MessagePattern;
import com.ibm.icu.text.MessagePattern.ArgType;
import com.ibm.icu.text.MessagePattern.Part;
import com.ibm.icu.text.PluralRules;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;

/**
 * One message in ICU message syntax: arguments by name, {@code plural} (with {@code #} and {@code =n}) and {@code select}. The library parses it and knows the
 * plural rules; how a fact is written is the reader's.
 */
final class Message {
    private static final String OTHER = "other";

    private final MessagePattern pattern;
    private final Locale locale;

    /**
     * Of its text.
     *
     * @throws IllegalArgumentException when the text is no message
     */
    Message(String text, Locale locale) {
        pattern = new MessagePattern(MessagePattern.ApostropheMode.DOUBLE_OPTIONAL).parse(text);
        this.locale = locale;
    }

    /** What a message asks of whoever fills it. */
    interface Facts {
        /** The words of a fact where it stands. */
        String words(String name);

        /** The count by which a plural chooses. */
        long count(String name);

        /** The word by which a select chooses. */
        String choice(String name);
    }

    String fill(Facts facts) {
        var filled = new StringBuilder();
        fill(0, facts, "#", filled);
        return filled.toString();
    }

    /** The names of its arguments, each once, with the kind behind it where it is not plain: "n plural". */
    Set<String> arguments() {
        var names = new TreeSet<String>();
        for (int i = 0; i < pattern.countParts(); i++) {
            if (pattern.getPart(i).getType() == Part.Type.ARG_START) {
                names.add(pattern.getSubstring(pattern.getPart(i + 1)));
            }
        }
        return names;
    }

    /** The words by which a select of this argument chooses, "other" left out. */
    Set<String> choices(String argument) {
        var choices = new TreeSet<String>();
        for (int i = 0; i < pattern.countParts(); i++) {
            var part = pattern.getPart(i);
            if (part.getType() == Part.Type.ARG_START
                    && part.getArgType() == ArgType.SELECT
                    && pattern.getSubstring(pattern.getPart(i + 1)).equals(argument)) {
                for (int at = i + 2; at < pattern.getLimitPartIndex(i); at = pattern.getLimitPartIndex(at + 1) + 1) {
                    choices.add(pattern.getSubstring(pattern.getPart(at)));
                }
            }
        }
        choices.remove(OTHER);
        return choices;
    }

    /**
     * Fills the message that starts at a part.
     *
     * @param counted what stands for # there
     */
    private void fill(int start, Facts facts, String counted, StringBuilder filled) {
        var text = pattern.getPatternString();
        int from = pattern.getPart(start).getLimit();
        for (int i = start + 1; ; i++) {
            var part = pattern.getPart(i);
            filled.append(text, from, part.getIndex());
            from = part.getLimit();
            switch (part.getType()) {
                case MSG_LIMIT -> {
                    return;
                }
                case REPLACE_NUMBER -> filled.append(counted);
                case ARG_START -> {
                    fillArgument(i, facts, filled);
                    i = pattern.getLimitPartIndex(i);
                    from = pattern.getPart(i).getLimit();
                }
                default -> {
                    // SKIP_SYNTAX is an apostrophe that quotes: left out. INSERT_CHAR says where one could be put:
                    // nothing is said there.
                }
            }
        }
    }

    private void fillArgument(int start, Facts facts, StringBuilder filled) {
        var name = pattern.getSubstring(pattern.getPart(start + 1));
        switch (pattern.getPart(start).getArgType()) {
            case NONE -> filled.append(facts.words(name));
            case PLURAL -> {
                long count = facts.count(name);
                fill(chosen(start, "=" + count, PluralRules.forLocale(locale).select((double) count)), facts, facts.words(name), filled);
            }
            case SELECT -> fill(chosen(start, facts.choice(name), OTHER), facts, "#", filled);
            default ->
                throw new IllegalArgumentException("argument %s of \"%s\", expected none, plural or select"
                        .formatted(name, pattern.getPatternString()));
        }
    }

    /** The start of the message behind the first of these words that is there, else behind "other". */
    private int chosen(int start, String first, String second) {
        int found = -1;
        int foundSecond = -1;
        int foundOther = -1;
        for (int i = start + 2; i < pattern.getLimitPartIndex(start); ) {
            var word = pattern.getSubstring(pattern.getPart(i));
            int message = i + 1;
            while (pattern.getPart(message).getType() != Part.Type.MSG_START) {
                message++;
            }
            if (word.equals(first)) {
                found = message;
            } else if (word.equals(second)) {
                foundSecond = message;
            }
            if (word.equals(OTHER)) {
                foundOther = message;
            }
            i = pattern.getLimitPartIndex(message) + 1;
        }
        return found >= 0 ? found : foundSecond >= 0 ? foundSecond : foundOther;
    }
}
