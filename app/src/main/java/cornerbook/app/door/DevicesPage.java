package cornerbook.app.door;

import cornerbook.app.book.people.PairedDevice;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The tablets that are paired, and the code that pairs the next one.
 *
 * @param open whether other machines can reach the server at all
 * @param address that the tablet opens
 * @param codePicture the address with its code as a QR code
 * @param certificate null when a tablet needs none
 * @param problem one sentence, empty when there is none
 */
public record DevicesPage(
        boolean open,
        String address,
        String code,
        String codePicture,
        @Nullable Certificate certificate,
        List<String> people,
        List<PairedDevice> devices,
        String problem) {
    public DevicesPage {
        people = List.copyOf(people);
        devices = List.copyOf(devices);
    }

    /**
     * The shop's certificate.
     *
     * @param address at which a tablet gets it
     */
    public record Certificate(String address, String fingerprint) {}

    public long codeLastsMinutes() {
        return Pairing.CODE_LASTS.toMinutes();
    }

    /** Digits of a PIN, at least. */
    public int shortestPin() {
        return Pin.SHORTEST;
    }

    /** Digits of a PIN, at most. */
    public int longestPin() {
        return Pin.LONGEST;
    }
}
