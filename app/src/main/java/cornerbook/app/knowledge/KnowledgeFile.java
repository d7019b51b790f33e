package cornerbook.app.knowledge;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static java.nio.charset.StandardCharsets.UTF_8;

import cornerbook.core.finding.Knowledge;
import cornerbook.core.finding.KnowledgeOrigin;
import cornerbook.core.finding.OthersKnowledge;
import cornerbook.core.say.Day;
import cornerbook.core.say.Refused;
import java.time.LocalDate;
import java.util.Base64;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/**
 * What many cars taught, as it goes from one book to another: a head line with the version of the form, the numbers as JSON, the
 * public key of who signed, and the signature of all bytes before its own line.
 *
 * @param release of the program that learned it
 */
public record KnowledgeFile(Extent extent, Knowledge knowledge, String release) {
    /** Of the form; another meaning of any number is another version. */
    public static final int VERSION = 1;

    /** A thousand tyre models for each driven axle and season. */
    public static final int MOST_BYTES = 8 * 1024 * 1024;

    private static final int BYTES_PER_MEGABYTE = 1024 * 1024;

    private static final String HEAD = "Cornerbook knowledge ";
    private static final String KEY = "key ";
    private static final String SIGNATURE = "signature ";

    private static final Pattern HEAD_LINE = Pattern.compile("^\\uFEFF?" + HEAD + "([0-9]{1,9})\\r?\\n");
    private static final Pattern SIGNED =
            Pattern.compile("\\n" + KEY + "([A-Za-z0-9+/=]{1,200})\\n" + SIGNATURE + "([A-Za-z0-9+/=]{1,200})\\n?$");

    /**
     * A file that was read, with who signed it.
     *
     * @param key that is trusted
     */
    public record Signed(KnowledgeFile file, PublicKeyText key) {}

    /** What this program learned. */
    public static KnowledgeFile of(Extent extent, Knowledge knowledge) {
        return new KnowledgeFile(extent, knowledge, KnowledgeForm.thisRelease());
    }

    /**
     * The signed text of what was learned. Numbers of few cars are left out, so that no car can be told from them.
     *
     * @throws Refused when too few cars are left
     */
    public String write(SigningKey key) {
        var content = HEAD + VERSION + "\n" + KnowledgeForm.write(this) + "\n" + KEY
                + key.publicKey().base64() + "\n";
        return content + SIGNATURE + Base64.getEncoder().encodeToString(key.sign(content.getBytes(UTF_8))) + "\n";
    }

    /**
     * Reads a text. None of its numbers is looked at before it is known who signed them.
     *
     * @param trusted which keys are trusted
     * @param today the day after which nothing can have been learned
     * @throws Refused with one sentence
     */
    public static Signed read(String text, Predicate<PublicKeyText> trusted, LocalDate today) {
        if (text.length() > MOST_BYTES) {
            throw new Refused(new KnowledgeSaid.TooLong(MOST_BYTES / BYTES_PER_MEGABYTE));
        }
        var head = HEAD_LINE.matcher(text);
        if (!head.find()) {
            throw new Refused(new KnowledgeSaid.NoKnowledge());
        }
        if (!head.group(1).equals(String.valueOf(VERSION))) {
            throw new Refused(new KnowledgeSaid.OtherForm(head.group(1), VERSION));
        }
        // Forms and mail programs change the ends of lines; no line holds one inside.
        var lines = text.replace("\r\n", "\n").replace("\uFEFF", "").stripTrailing();
        var signed = SIGNED.matcher(lines);
        if (!signed.find()) {
            throw new Refused(new KnowledgeSaid.NotSigned());
        }
        var key = new PublicKeyText(signed.group(1));
        if (!trusted.test(key)) {
            throw new Refused(new KnowledgeSaid.NotTrusted(fingerprint(key)));
        }
        int end = signed.start(2) - SIGNATURE.length();
        if (!key.hasSigned(lines.substring(0, end).getBytes(UTF_8), bytes(signed.group(2)))) {
            throw new Refused(new KnowledgeSaid.Altered());
        }
        var file =
                KnowledgeForm.read(lines.substring(HEAD.length() + head.group(1).length() + 1, signed.start()));
        var learnedOn = file.learnedOn();
        if (learnedOn.isAfter(today)) {
            throw new Refused(new KnowledgeSaid.NotYet(new Day(learnedOn)));
        }
        return new Signed(file, key);
    }

    /** What stands in a line may be no key. */
    private static String fingerprint(PublicKeyText key) {
        try {
            return key.fingerprint();
        } catch (IllegalArgumentException e) {
            throw new Refused(new KnowledgeSaid.NotSigned());
        }
    }

    private static byte[] bytes(String base64) {
        try {
            return Base64.getDecoder().decode(base64.getBytes(US_ASCII));
        } catch (IllegalArgumentException e) {
            throw new Refused(new KnowledgeSaid.Altered());
        }
    }

    public LocalDate learnedOn() {
        return Objects.requireNonNull(knowledge.learnedOn());
    }

    /** For a book to learn from its own beside it. */
    public OthersKnowledge as(String signedBy) {
        return new OthersKnowledge(
                new KnowledgeOrigin(extent.cars(), extent.shops(), signedBy, learnedOn()), knowledge);
    }
}
