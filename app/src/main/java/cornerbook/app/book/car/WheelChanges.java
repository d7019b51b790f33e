package cornerbook.app.book.car;

import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.TableRow;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Puts right what the book has of a set and its wheels, and keeps what stood there. Runs inside the caller's transaction. */
public final class WheelChanges {
    private final Handle handle;
    private final String vehicleId;
    private final ChangeRows rows;

    public WheelChanges(Handle handle, String vehicleId) {
        this.handle = handle;
        this.vehicleId = vehicleId;
        this.rows = new ChangeRows(handle, "wheel_change", vehicleId);
    }

    /** The wheels of a set that is in the book, under the tags that they have there. */
    void apply(WheelSet before, WheelSet after, LocalDate day) {
        if (!after.id().equals(before.id()) || !tags(after).equals(tags(before))) {
            throw new BookException("Wheels of the set %s are %s, expected %s as the book has them"
                    .formatted(before.id(), tags(after), tags(before)));
        }
        new TableRow("wheel_set")
                .set("vehicle_id", vehicleId)
                .set("id", after.id())
                .set("season", after.season())
                .set("store_place", after.storePlace())
                .update(handle, List.of("vehicle_id", "id"));
        keepChanged(after.id(), values(before), values(after), day);
        for (int i = 0; i < before.wheels().size(); i++) {
            apply(before.wheels().get(i), after.wheels().get(i), day);
        }
    }

    private void apply(Wheel before, Wheel after, LocalDate day) {
        if (before.equals(after)) {
            return;
        }
        VehicleRows.wheel(after).set("vehicle_id", vehicleId).update(handle, List.of("vehicle_id", "tag"));
        keepChanged(after.tag(), values(before), values(after), day);
    }

    private void keepChanged(
            String tag, Map<String, @Nullable String> before, Map<String, @Nullable String> after, LocalDate day) {
        after.forEach((what, now) -> {
            var was = before.get(what);
            if (!Objects.equals(was, now)) {
                keep(new WheelChange(tag, what, was, now, day));
            }
        });
    }

    /** Puts a change behind those that are kept. */
    public void keep(WheelChange change) {
        rows.next()
                .set("tag", change.tag())
                .set("what", change.what())
                .set("before_text", change.before())
                .set("after_text", change.after())
                .set("changed_on", change.on())
                .insert(handle);
    }

    /** All changes, earliest first. */
    public List<WheelChange> list() {
        return rows.list((row, context) -> new WheelChange(
                row.getString("tag"),
                row.getString("what"),
                row.getString("before_text"),
                row.getString("after_text"),
                LocalDate.parse(row.getString("changed_on"))));
    }

    private static List<String> tags(WheelSet set) {
        return set.wheels().stream().map(Wheel::tag).toList();
    }

    private static Map<String, @Nullable String> values(WheelSet set) {
        Map<String, @Nullable String> values = new LinkedHashMap<>();
        values.put("season", set.season().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        values.put("store place", set.storePlace());
        return values;
    }

    private static Map<String, @Nullable String> values(Wheel wheel) {
        var tyre = wheel.tyre();
        var details = wheel.details();
        var mounting = details.mounting();
        Map<String, @Nullable String> values = new LinkedHashMap<>();
        values.put("model", tyre.model());
        values.put("size", tyre.size());
        values.put("load index", String.valueOf(tyre.loadIndex()));
        values.put("speed symbol", tyre.speedSymbol());
        values.put("TIN", tyre.tin());
        values.put("directional", tyre.directional() ? "yes" : "no");
        values.put("asymmetric", tyre.asymmetric() ? "yes" : "no");
        values.put("depth when new", tyre.newDepthMm() + " mm");
        values.put("sensor identity", wheel.sensorId());
        values.put("mounting", mounting == null ? null : mounting.written());
        values.put("sensor type", details.sensorType());
        values.put("sensor's battery from", CarWriter.text(details.sensorBatteryOn()));
        return values;
    }
}
