package cornerbook.app.book.car;

import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.TableRow;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
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
            throw new BookException(new CarSaid.OtherWheels(before.id(), tags(after), tags(before)));
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

    /**
     * A set of the car lies elsewhere; the car's revision goes on, so that whoever has its form open does not write the old place back.
     *
     * @param place null when it lies nowhere in the store
     */
    public void lay(String setId, @Nullable String place, LocalDate day) {
        var before = handle.select(
                        "select store_place from wheel_set where vehicle_id = ? and id = ?", vehicleId, setId)
                .map((row, context) -> Optional.ofNullable(row.getString("store_place")))
                .one()
                .orElse(null);
        if (Objects.equals(before, place)) {
            return;
        }
        new TableRow("wheel_set")
                .set("vehicle_id", vehicleId)
                .set("id", setId)
                .set("store_place", place)
                .update(handle, List.of("vehicle_id", "id"));
        keep(new WheelChange(setId, WheelValue.STORE_PLACE.written(), before, place, day));
        handle.execute("update vehicle set revision = revision + 1 where id = ?", vehicleId);
    }

    private void apply(Wheel before, Wheel after, LocalDate day) {
        if (before.equals(after)) {
            return;
        }
        VehicleRows.wheel(after).set("vehicle_id", vehicleId).update(handle, List.of("vehicle_id", "tag"));
        keepChanged(after.tag(), values(before), values(after), day);
    }

    private void keepChanged(
            String tag,
            Map<WheelValue, @Nullable String> before,
            Map<WheelValue, @Nullable String> after,
            LocalDate day) {
        after.forEach((value, now) -> {
            var was = before.get(value);
            if (!Objects.equals(was, now)) {
                keep(new WheelChange(tag, value.written(), was, now, day));
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

    private static List<Said> tags(WheelSet set) {
        return set.wheels().stream().map(Wheel::tag).map(Said::verbatim).toList();
    }

    private static Map<WheelValue, @Nullable String> values(WheelSet set) {
        Map<WheelValue, @Nullable String> values = new EnumMap<>(WheelValue.class);
        values.put(
                WheelValue.SEASON, set.season().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        values.put(WheelValue.STORE_PLACE, set.storePlace());
        return values;
    }

    private static Map<WheelValue, @Nullable String> values(Wheel wheel) {
        var tyre = wheel.tyre();
        var details = wheel.details();
        var mounting = details.mounting();
        Map<WheelValue, @Nullable String> values = new EnumMap<>(WheelValue.class);
        values.put(WheelValue.MODEL, tyre.model());
        values.put(WheelValue.SIZE, tyre.size());
        values.put(WheelValue.LOAD_INDEX, text(tyre.loadIndex(), String::valueOf));
        values.put(WheelValue.SPEED_SYMBOL, tyre.speedSymbol());
        values.put(WheelValue.TIN, tyre.tin());
        values.put(
                WheelValue.DIRECTIONAL,
                text(tyre.directional(), flag -> YesOrNo.of(flag).written()));
        values.put(
                WheelValue.ASYMMETRIC,
                text(tyre.asymmetric(), flag -> YesOrNo.of(flag).written()));
        values.put(WheelValue.DEPTH_WHEN_NEW, text(tyre.newDepthMm(), depth -> depth + " mm"));
        values.put(WheelValue.SENSOR_IDENTITY, wheel.sensorId());
        values.put(WheelValue.MOUNTING, mounting == null ? null : mounting.written());
        values.put(WheelValue.SENSOR_TYPE, details.sensorType());
        values.put(WheelValue.SENSOR_BATTERY_FROM, CarWriter.text(details.sensorBatteryOn()));
        return values;
    }

    private static <T> @Nullable String text(@Nullable T value, Function<T, String> written) {
        return value == null ? null : written.apply(value);
    }
}
