package cornerbook.app.door;

import cornerbook.app.book.people.PairedDevice;
import java.util.List;

/**
 * The tablets that are paired, and the code that pairs the next one.
 *
 * @param open whether other machines can reach the server at all
 * @param address that the tablet opens
 * @param codePicture the address with its code as a QR code
 * @param certificateAddress at which a tablet gets the shop's certificate; empty when it needs none
 * @param fingerprint of that certificate, may be empty
 * @param shortestPin digits, as {@code longestPin}
 * @param problem one sentence, empty when there is none
 */
public record DevicesPage(
        boolean open,
        String address,
        String code,
        String codePicture,
        String certificateAddress,
        String fingerprint,
        long codeLastsMinutes,
        int shortestPin,
        int longestPin,
        List<String> people,
        List<PairedDevice> devices,
        String problem) {
    public DevicesPage {
        people = List.copyOf(people);
        devices = List.copyOf(devices);
    }
}
