package cornerbook.app.book.people;

import cornerbook.app.book.store.Transactions;
import cornerbook.app.preference.Look;
import cornerbook.app.preference.Preferences;
import cornerbook.words.Language;
import cornerbook.words.UnitSystem;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;

/** Keeps who works on tablets, and which tablets are paired. What proves a secret is made and checked elsewhere. */
public final class DeviceLedger {
    private final Transactions store;

    public DeviceLedger(Transactions store) {
        this.store = store;
    }

    /**
     * A person who may pair tablets; a new PIN takes the place of the one before, and who had left is there again.
     *
     * @param pinHash empty for who has none yet, and pairs nothing
     */
    public void putPerson(String name, String pinHash) {
        store.write(handle -> handle.execute(
                "insert into person (name, pin_hash) values (?, ?) on conflict (name) do update set pin_hash = excluded.pin_hash, removed_at = null",
                name,
                pinHash));
    }

    /**
     * A person who has left: can do nothing any more, and nothing is kept but the name, which stands with what they did. Tablets
     * that they work on now are unpaired.
     *
     * @return the ids of those tablets
     */
    public List<String> removePerson(String name, Instant at) {
        return store.write(handle -> {
            var worksOn = handle.select(
                            "select device.id from device join device_person on device_person.device_id = device.id where device.unpaired_at is null and device_person.person = ? and device_person.turn = (select max(turn) from device_person as any_person where any_person.device_id = device.id)",
                            name)
                    .mapTo(String.class)
                    .list();
            worksOn.forEach(id -> unpair(handle, id, at));
            handle.execute("delete from device_person where person = ?", name);
            handle.execute("delete from preference where person = ?", name);
            handle.execute("delete from work_hours where person = ?", name);
            handle.execute("delete from calendar_address where whose = ?", name);
            handle.execute("update person set removed_at = ?, pin_hash = '' where name = ?", at.toString(), name);
            return worksOn;
        });
    }

    public List<String> listPeople() {
        return store.read(handle -> handle.select("select name from person where removed_at is null order by name")
                .mapTo(String.class)
                .list());
    }

    public Optional<String> findPinHash(String person) {
        return store.read(handle -> handle.select(
                        "select pin_hash from person where name = ? and removed_at is null and pin_hash <> ''", person)
                .mapTo(String.class)
                .findFirst());
    }

    public void pair(PairedDevice device, String secretHash) {
        store.write(handle -> {
            handle.execute(
                    "insert into device (id, name, person, secret_hash, paired_at) values (?, ?, ?, ?, ?)",
                    device.id(),
                    device.name(),
                    device.person(),
                    secretHash,
                    device.pairedAt().toString());
            return takeOver(handle, device.id(), device.person());
        });
    }

    /** From now on this person works on the tablet. */
    public void takeOver(String deviceId, String person) {
        store.write(handle -> takeOver(handle, deviceId, person));
    }

    private static int takeOver(Handle handle, String deviceId, String person) {
        return handle.execute(
                "insert into device_person (device_id, person, turn) values (?, ?, (select coalesce(max(turn), 0) + 1 from device_person where device_id = ?)) on conflict (device_id, person) do update set turn = excluded.turn",
                deviceId,
                person,
                deviceId);
    }

    /** Everybody who has typed their PIN on a tablet, the one who works on it now first. */
    public List<String> listWorkers(String deviceId) {
        return store.read(handle -> handle.select(
                        "select person from device_person where device_id = ? order by turn desc", deviceId)
                .mapTo(String.class)
                .list());
    }

    /** A tablet that is paired; empty for one that never was, or is lost. */
    public Optional<TabletAtWork> findAtWork(String deviceId) {
        return store.read(handle -> handle.select(
                        "select device.id as device_id, device.secret_hash, device_person.person, preference.units, preference.look, preference.walk, preference.language from device join device_person on device_person.device_id = device.id left join preference on preference.person = device_person.person where device.id = ? and device.unpaired_at is null order by device_person.turn desc limit 1",
                        deviceId)
                .map((row, context) -> new TabletAtWork(
                        row.getString("device_id"),
                        row.getString("secret_hash"),
                        row.getString("person"),
                        row.getString("units") == null ? Preferences.DEFAULT : preferences(row)))
                .findFirst());
    }

    /** How people want their pages; who never chose is left out. */
    public Map<String, Preferences> listPreferences() {
        return store.read(handle -> handle.select("select * from preference order by person")
                .map((row, context) -> Map.entry(row.getString("person"), preferences(row)))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue)));
    }

    public void putPreferences(String person, Preferences preferences) {
        store.write(handle -> handle.execute(
                "insert into preference (person, units, look, walk, language) values (?, ?, ?, ?, ?) on conflict (person) do update set units = excluded.units, look = excluded.look, walk = excluded.walk, language = excluded.language",
                person,
                preferences.units().name(),
                preferences.look().name(),
                preferences.walkWords(),
                preferences.language().name()));
    }

    private static Preferences preferences(ResultSet row) throws SQLException {
        return new Preferences(
                UnitSystem.valueOf(row.getString("units")),
                Look.valueOf(row.getString("look")),
                Preferences.findWalk(row.getString("walk")).orElse(Preferences.DEFAULT.walk()),
                Language.valueOf(row.getString("language")));
    }

    /** Those that are paired, the latest first. */
    public List<PairedDevice> listPaired() {
        return store.read(handle -> handle.select(
                        "select * from device where unpaired_at is null order by paired_at desc, id")
                .map((row, context) -> new PairedDevice(
                        row.getString("id"),
                        row.getString("name"),
                        row.getString("person"),
                        Instant.parse(row.getString("paired_at"))))
                .list());
    }

    /** A tablet that is lost: it can do nothing any more. */
    public void unpair(String deviceId, Instant at) {
        store.write(handle -> unpair(handle, deviceId, at));
    }

    private static int unpair(Handle handle, String deviceId, Instant at) {
        return handle.execute(
                "update device set unpaired_at = ? where id = ? and unpaired_at is null", at.toString(), deviceId);
    }
}
