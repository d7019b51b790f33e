package cornerbook.app.bay;

import cornerbook.app.book.people.DeviceLedger;
import cornerbook.app.book.people.TabletAtWork;
import cornerbook.app.preference.Preferences;
import cornerbook.app.request.Caller;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What a tablet has to know of the people who work on it.
 *
 * @param person who works on it by what the book has; null where it is not paired
 * @param workers who has typed the PIN on it; entries of others wait until they do
 * @param people who has a PIN
 * @param chosen of the person, or of the browser where the tablet is not paired
 * @param chosenBy what each of the others chose, so that they can take over without a link
 */
record Me(
        @Nullable String person,
        List<String> workers,
        List<String> people,
        Chosen chosen,
        Map<String, Chosen> chosenBy) {

    /** Each by its name in addresses. */
    record Chosen(String units, String look, String walk, String language) {
        static Chosen of(Preferences preferences) {
            return new Chosen(
                    preferences.units().word(),
                    preferences.look().word(),
                    preferences.walkWords(),
                    preferences.language().tag());
        }
    }

    static Me of(Caller caller, DeviceLedger ledger) {
        var chosen = Chosen.of(caller.preferences());
        return caller.tablet()
                .map(tablet -> ofPaired(tablet, chosen, ledger))
                .orElseGet(() -> new Me(null, List.of(), List.of(), chosen, Map.of()));
    }

    private static Me ofPaired(TabletAtWork tablet, Chosen chosen, DeviceLedger ledger) {
        var chosenBy = ledger.listPreferences().entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, entry -> Chosen.of(entry.getValue())));
        return new Me(tablet.person(), ledger.listWorkers(tablet.deviceId()), ledger.listPeople(), chosen, chosenBy);
    }
}
