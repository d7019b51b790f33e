package cornerbook.app.door;

import cornerbook.app.book.people.DeviceLedger;
import cornerbook.app.book.people.PairedDevice;
import cornerbook.app.book.people.Secret;
import cornerbook.app.book.people.TabletAtWork;
import cornerbook.core.say.Refused;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.PBEKeySpec;
import org.jspecify.annotations.Nullable;

/**
 * Pairs tablets: the desk shows a code, a person types it on the tablet with name and PIN, and the tablet gets a secret of
 * 256 bits. The code has 12 digits and lasts ten minutes: at 10 000 tries a second, more than the server answers, six million
 * strangers' tries meet it with a chance of six in a million, and each still needs name and PIN. So wrong codes void nothing
 * and nobody is counted; only who has the right code can use it up, by five wrong PINs. Of the secret the book keeps a SHA-256, of the PIN a PBKDF2 (RFC 8018) with its own salt. Safe for use by many
 * threads.
 */
public final class Pairing {
    static final Duration CODE_LASTS = Duration.ofMinutes(10);
    /** As OWASP's password storage cheat sheet has it for PBKDF2 with HMAC-SHA-256 (from memory). */
    private static final int ROUNDS = 600_000;

    private static final long CODES = 1_000_000_000_000L;
    private static final int MOST_WRONG_PINS = 5;
    private static final String ROUNDS_SALT_HASH = "%s$%s$%s";

    private final DeviceLedger ledger;
    private final Clock clock;
    private final Refusals refusals;
    private final int rounds;
    private final SecureRandom random = new SecureRandom();
    private @Nullable String code;
    private Instant codeEnds = Instant.EPOCH;
    private int wrongPinsWithCode;
    /** When a wrong PIN was typed on a paired tablet, lately; at most so many times each. */
    private final Map<String, List<Instant>> wrongPins = new HashMap<>();

    Pairing(DeviceLedger ledger, Clock clock, Refusals refusals) {
        this(ledger, clock, refusals, ROUNDS);
    }

    /** For tests, which pair often: with other rounds; each PIN is kept with its own. */
    Pairing(DeviceLedger ledger, Clock clock, Refusals refusals, int rounds) {
        this.ledger = ledger;
        this.clock = clock;
        this.refusals = refusals;
        this.rounds = rounds;
    }

    /** The code that pairs one tablet; a new one when there is none, or the last was used up or is too old. */
    synchronized String code() {
        var standing = code;
        if (standing == null || clock.instant().isAfter(codeEnds)) {
            standing = String.format(Locale.ROOT, "%012d", random.nextLong(CODES));
            code = standing;
            codeEnds = clock.instant().plus(CODE_LASTS);
            wrongPinsWithCode = 0;
        }
        return standing;
    }

    /**
     * Pairs a tablet; gives what it has to show from now on.
     *
     * @throws Refused with one sentence when code, name or PIN are wrong
     */
    synchronized String pair(String typedCode, String deviceName, String person, String pin) {
        var standing = code;
        boolean rightCode = standing != null
                && clock.instant().isBefore(codeEnds)
                && Secret.isSame(standing, typedCode.replace(" ", ""));
        if (!rightCode) {
            throw refused(Refusals.Reason.WRONG_CODE);
        }
        var known = findKnown(person, pin);
        if (known.isEmpty()) {
            wrongPinsWithCode++;
            if (wrongPinsWithCode >= MOST_WRONG_PINS) {
                code = null;
            }
            throw refused(Refusals.Reason.WRONG_PIN);
        }
        code = null;
        var shown = Secret.make();
        var id = UUID.randomUUID().toString();
        ledger.pair(new PairedDevice(id, deviceName, known.get(), clock.instant()), Secret.hash(shown));
        return id + "." + shown;
    }

    /** The same words for each: a stranger must not learn which of the three was right. */
    private Refused refused(Refusals.Reason reason) {
        refusals.count(reason);
        return new Refused(new DoorSaid.CodeOrPinWrong());
    }

    /** The tablet that was given this; empty for one that is not paired. */
    Optional<TabletAtWork> find(Optional<String> shown) {
        var parts = shown.orElse("").split("\\.", 2);
        return parts.length < 2
                ? Optional.empty()
                : ledger.findAtWork(parts[0])
                        .filter(tablet -> Secret.isSame(tablet.secretHash(), Secret.hash(parts[1])));
    }

    /**
     * Another person works on a paired tablet from now on.
     *
     * @throws Refused with one sentence when the PIN is wrong, or PINs were wrong too often on this tablet
     */
    synchronized void takeOver(String deviceId, String person, String pin) {
        var wrong = wrongPins.getOrDefault(deviceId, List.of()).stream()
                .filter(at -> at.plus(CODE_LASTS).isAfter(clock.instant()))
                .toList();
        if (wrong.size() >= MOST_WRONG_PINS) {
            throw new Refused(new DoorSaid.WrongTooOften(MOST_WRONG_PINS, CODE_LASTS.toMinutes()));
        }
        var known = findKnown(person, pin);
        if (known.isEmpty()) {
            refusals.count(Refusals.Reason.WRONG_PIN);
            wrongPins.put(
                    deviceId,
                    Stream.concat(wrong.stream(), Stream.of(clock.instant())).toList());
            throw new Refused(new DoorSaid.PinWrong());
        }
        wrongPins.remove(deviceId);
        ledger.takeOver(deviceId, known.get());
    }

    /** The person as the book has the name, when the PIN is theirs; a telephone may write names with other capitals. */
    private Optional<String> findKnown(String person, String pin) {
        return ledger.listPeople().stream()
                .filter(person::equalsIgnoreCase)
                .filter(name -> ledger.findPinHash(name)
                        .filter(hash -> provesPin(hash, pin))
                        .isPresent())
                .findFirst();
    }

    /** What the book keeps of a PIN. */
    String hashPin(String pin) {
        var salt = new byte[16];
        random.nextBytes(salt);
        return ROUNDS_SALT_HASH.formatted(
                rounds, HexFormat.of().formatHex(salt), HexFormat.of().formatHex(derive(pin, salt, rounds)));
    }

    private static boolean provesPin(String hash, String pin) {
        var parts = hash.split("\\$", 3);
        return Secret.isSame(
                parts[2],
                HexFormat.of().formatHex(derive(pin, HexFormat.of().parseHex(parts[1]), Integer.parseInt(parts[0]))));
    }

    static byte[] derive(String pin, byte[] salt, int rounds) {
        try {
            return SecretKeyFactory.getInstance("PBKDF2WithHmacSHA256")
                    .generateSecret(new PBEKeySpec(pin.toCharArray(), salt, rounds, 256))
                    .getEncoded();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java platform has PBKDF2 with HMAC-SHA-256", e);
        }
    }
}
