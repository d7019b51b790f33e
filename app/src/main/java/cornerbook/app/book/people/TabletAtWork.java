package cornerbook.app.book.people;

import cornerbook.app.preference.Preferences;

/**
 * A paired tablet and who works on it now.
 *
 * @param secretHash proves what the tablet shows
 */
public record TabletAtWork(String deviceId, String secretHash, String person, Preferences preferences) {}
