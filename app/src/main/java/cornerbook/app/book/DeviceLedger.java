package cornerbook.app.book;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Keeps who works on tablets, and which tablets are paired. What proves a secret is made and checked elsewhere. */
public final class DeviceLedger {
    private final BookStore store;

    DeviceLedger(BookStore store) {
        this.store = store;
    }

    /** A person who may pair tablets; a new PIN takes the place of the one before. */
    public void putPerson(String name, String pinHash) {
        store.write(handle -> handle.execute(
                "insert into person (name, pin_hash) values (?, ?) on conflict (name) do update set pin_hash = excluded.pin_hash",
                name,
                pinHash));
    }

    public List<String> listPeople() {
        return store.read(handle -> handle.select("select name from person order by name")
                .mapTo(String.class)
                .list());
    }

    public Optional<String> findPinHash(String person) {
        return store.read(handle -> handle.select("select pin_hash from person where name = ?", person)
                .mapTo(String.class)
                .findFirst());
    }

    public void pair(PairedDevice device, String secretHash) {
        store.write(handle -> handle.execute(
                "insert into device (id, name, person, secret_hash, paired_at) values (?, ?, ?, ?, ?)",
                device.id(),
                device.name(),
                device.person(),
                secretHash,
                device.pairedAt().toString()));
    }

    /** What proves the secret of a tablet that is paired; empty for one that never was, or is lost. */
    public Optional<String> findSecretHash(String deviceId) {
        return store.read(
                handle -> handle.select("select secret_hash from device where id = ? and unpaired_at is null", deviceId)
                        .mapTo(String.class)
                        .findFirst());
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
        store.write(handle -> handle.execute(
                "update device set unpaired_at = ? where id = ? and unpaired_at is null", at.toString(), deviceId));
    }
}
