package cornerbook.app.book.knowledge;

import static java.nio.charset.StandardCharsets.UTF_8;

import cornerbook.core.assess.CarShare;
import cornerbook.core.brake.seizing.CensoredTime;
import cornerbook.core.brake.seizing.PadHistory;
import cornerbook.core.brake.seizing.SeizingExposure;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.Spot;
import cornerbook.core.reread.ReadTwice;
import cornerbook.core.tread.CornerDistances;
import cornerbook.core.tread.NewDepth;
import cornerbook.core.tread.TreadReading;
import cornerbook.core.tread.WearHistory;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;

/**
 * A car's share as bytes, and back to the same numbers bit for bit. Only the program that wrote them reads them; whoever changes
 * their form changes {@link #FORM}.
 */
public final class ShareBytes {
    /** Of these bytes. */
    static final String FORM = "1";

    private ShareBytes() {}

    private interface Part<T> {
        void write(DataOutputStream out, T part) throws IOException;
    }

    private interface PartReader<T> {
        T read(DataInputStream in) throws IOException;
    }

    /** Of what a car teaches. */
    public static byte[] of(CarShare share) {
        return packed(out -> {
            writeAll(out, share.wear(), ShareBytes::writeWear);
            writeAll(out, share.pads(), ShareBytes::writePad);
            writeAll(out, List.copyOf(share.kmPerDay().entrySet()), (to, season) -> {
                writeConstant(to, season.getKey());
                writeAll(to, season.getValue(), DataOutputStream::writeDouble);
            });
        });
    }

    /** What a car teaches. */
    public static CarShare share(byte[] packed) {
        return unpacked(packed, in -> {
            var wear = readAll(in, ShareBytes::readWear);
            var pads = readAll(in, ShareBytes::readPad);
            var kmPerDay = new EnumMap<SeasonKind, List<Double>>(SeasonKind.class);
            int kinds = in.readInt();
            for (int i = 0; i < kinds; i++) {
                kmPerDay.put(readConstant(in, SeasonKind.values()), readAll(in, DataInputStream::readDouble));
            }
            return new CarShare(wear, pads, kmPerDay);
        });
    }

    static byte[] of(List<ReadTwice> readTwice) {
        return packed(out -> writeAll(out, readTwice, (to, each) -> {
            writeText(to, each.first());
            writeText(to, each.second());
            writeAll(to, each.differencesMm(), DataOutputStream::writeDouble);
        }));
    }

    static List<ReadTwice> readTwice(byte[] packed) {
        return unpacked(
                packed,
                in -> readAll(
                        in,
                        from -> new ReadTwice(
                                readText(from), readText(from), readAll(from, DataInputStream::readDouble))));
    }

    private static void writeWear(DataOutputStream out, WearHistory history) throws IOException {
        writeText(out, history.car());
        writeConstant(out, history.drive());
        writeConstant(out, history.season());
        var model = history.tyreModel();
        out.writeBoolean(model != null);
        if (model != null) {
            writeText(out, model);
        }
        writeAll(out, history.newDepths(), (to, depth) -> {
            to.writeDouble(depth.depthMm());
            to.writeBoolean(depth.known());
        });
        // The grooves of a tyre have run alike, and so have tyres of an axle: each run stands once.
        var runs = new LinkedHashMap<CornerDistances, Integer>();
        history.readings().forEach(reading -> runs.putIfAbsent(reading.run(), runs.size()));
        writeAll(out, List.copyOf(runs.keySet()), ShareBytes::writeRun);
        writeAll(out, history.readings(), (to, reading) -> {
            to.writeInt(reading.visit());
            to.writeInt(reading.tyre());
            writeConstant(to, reading.groove());
            to.writeInt(runs.getOrDefault(reading.run(), -1));
            to.writeDouble(reading.depthMm());
        });
    }

    private static WearHistory readWear(DataInputStream in) throws IOException {
        var car = readText(in);
        var drive = readConstant(in, DriveLayout.values());
        var season = readConstant(in, SeasonKind.values());
        var model = in.readBoolean() ? readText(in) : null;
        var newDepths = readAll(in, from -> new NewDepth(from.readDouble(), from.readBoolean()));
        var runs = readAll(in, ShareBytes::readRun);
        var readings = readAll(
                in,
                from -> new TreadReading(
                        from.readInt(),
                        from.readInt(),
                        readConstant(from, Spot.values()),
                        runs.get(from.readInt()),
                        from.readDouble()));
        return new WearHistory(car, drive, season, model, newDepths, readings);
    }

    private static void writeRun(DataOutputStream out, CornerDistances run) throws IOException {
        writeAll(out, run.legs(), (to, leg) -> {
            to.writeInt(leg.season());
            writeConstant(to, leg.corner());
            to.writeDouble(leg.thousandKm());
        });
    }

    private static CornerDistances readRun(DataInputStream in) throws IOException {
        return new CornerDistances(readAll(
                in,
                from -> new CornerDistances.Leg(
                        from.readInt(), readConstant(from, Corner.values()), from.readDouble())));
    }

    private static void writePad(DataOutputStream out, PadHistory pad) throws IOException {
        out.writeDouble(pad.seized().after());
        out.writeDouble(pad.seized().by());
        out.writeDouble(pad.exposure().saltShare());
        out.writeBoolean(pad.exposure().garaged());
        out.writeDouble(pad.exposure().distanceKmPerYear());
        out.writeDouble(pad.exposure().frictionBrakeShare());
    }

    private static PadHistory readPad(DataInputStream in) throws IOException {
        return new PadHistory(
                new CensoredTime(in.readDouble(), in.readDouble()),
                new SeizingExposure(in.readDouble(), in.readBoolean(), in.readDouble(), in.readDouble()));
    }

    private static void writeConstant(DataOutputStream out, Enum<?> constant) throws IOException {
        out.writeByte(constant.ordinal());
    }

    private static <E> E readConstant(DataInputStream in, E[] constants) throws IOException {
        return constants[in.readUnsignedByte()];
    }

    private static void writeText(DataOutputStream out, String text) throws IOException {
        var bytes = text.getBytes(UTF_8);
        out.writeInt(bytes.length);
        out.write(bytes);
    }

    private static String readText(DataInputStream in) throws IOException {
        return new String(in.readNBytes(in.readInt()), UTF_8);
    }

    private static <T> void writeAll(DataOutputStream out, List<T> all, Part<T> part) throws IOException {
        out.writeInt(all.size());
        for (var each : all) {
            part.write(out, each);
        }
    }

    private static <T> List<T> readAll(DataInputStream in, PartReader<T> part) throws IOException {
        int size = in.readInt();
        var all = new ArrayList<T>(size);
        for (int i = 0; i < size; i++) {
            all.add(part.read(in));
        }
        return all;
    }

    private interface Content {
        void write(DataOutputStream out) throws IOException;
    }

    private static byte[] packed(Content content) {
        var bytes = new ByteArrayOutputStream();
        var deflater = new Deflater(Deflater.BEST_SPEED);
        try (var out = new DataOutputStream(new DeflaterOutputStream(bytes, deflater))) {
            content.write(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            deflater.end();
        }
        return bytes.toByteArray();
    }

    private static <T> T unpacked(byte[] packed, PartReader<T> content) {
        try (var in = new DataInputStream(new InflaterInputStream(new ByteArrayInputStream(packed)))) {
            return content.read(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
