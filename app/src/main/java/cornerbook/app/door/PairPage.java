package cornerbook.app.door;

/**
 * What a tablet shows that is not paired yet; nothing of the shop stands on it.
 *
 * @param code as the QR code brought it, may be empty
 * @param problem one sentence, empty when there is none
 */
public record PairPage(String code, String problem) {}
