package cornerbook.app.web;

import java.util.List;

/**
 * What a tablet shows that is not paired yet.
 *
 * @param code as the QR code brought it, may be empty
 * @param problem one sentence, empty when there is none
 */
public record PairPage(String code, List<String> people, String problem) {
    public PairPage {
        people = List.copyOf(people);
    }
}
