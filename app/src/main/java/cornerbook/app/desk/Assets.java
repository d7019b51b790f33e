package cornerbook.app.desk;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.GZIPOutputStream;

/** Style, script and fonts, held in memory. Their address carries a digest of them all, so it may be kept for good. */
final class Assets {
    private static final List<String> NAMES = List.of(
            "b612-400.woff2",
            "b612-700.woff2",
            "bay-aside.mjs",
            "bay-ask.mjs",
            ModuleWords.NAME,
            "bay-clock.mjs",
            "bay-depart.mjs",
            "bay-dictation.mjs",
            "bay-dom.mjs",
            "bay-elsewhere.mjs",
            "bay-field.mjs",
            "bay-gauge.mjs",
            "bay-held.mjs",
            "bay-leave.mjs",
            "bay-lexicon.mjs",
            "bay-likely.mjs",
            "bay-message.mjs",
            "bay-numerals.mjs",
            "bay-odometer.mjs",
            "bay-outbox.mjs",
            "bay-panel.mjs",
            "bay-person.mjs",
            "bay-photo.mjs",
            "bay-remark.mjs",
            "bay-scan.mjs",
            "bay-sheet.mjs",
            "bay-shelf.mjs",
            "bay-spoken.mjs",
            "bay-steps.mjs",
            "bay-store.mjs",
            "bay-tools.mjs",
            "bay-torque.mjs",
            "bay-tray.mjs",
            "bay-typed.mjs",
            "bay-visit.mjs",
            "bay-wheels.mjs",
            "bay-whereabouts.mjs",
            "bay-words.mjs",
            "bay-written.mjs",
            "bay.css",
            "bay.mjs",
            "choose-file.mjs",
            "copy-text.mjs",
            "cornerbook.css",
            "fill-wheels.mjs",
            "jsqr.js",
            "mark.svg",
            "judged-rows.mjs",
            "next-field.mjs",
            "out-progress.mjs",
            "send-photo.mjs",
            "sign-here.mjs",
            "sits.mjs",
            "unsaved.mjs",
            "whole-field.mjs",
            "worker.mjs");

    /**
     * One file as it is sent.
     *
     * @param packed whether the content is packed by itself already
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Asset(String type, byte[] content, boolean packed) {}

    private final Map<String, Asset> assets = new LinkedHashMap<>();
    private final String basePath;

    Assets() {
        try {
            var digest = MessageDigest.getInstance("SHA-256");
            for (var name : NAMES) {
                var content = name.equals(ModuleWords.NAME) ? ModuleWords.module() : content(name);
                digest.update(content);
                assets.put(name, new Asset(typeOf(name), content, isPacked(name)));
            }
            basePath = "/assets/" + HexFormat.of().formatHex(digest.digest(), 0, 8);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    String basePath() {
        return basePath;
    }

    /** Names of the modules of the bay sheet, besides the one that begins. */
    static List<String> bayModules() {
        return NAMES.stream()
                .filter(name -> name.startsWith("bay-") && name.endsWith(".mjs"))
                .toList();
    }

    Optional<Asset> find(String name) {
        return Optional.ofNullable(assets.get(name));
    }

    private static String typeOf(String name) {
        return switch (name.substring(name.lastIndexOf('.') + 1)) {
            case "woff2" -> "font/woff2";
            case "css" -> "text/css; charset=utf-8";
            case "svg" -> "image/svg+xml";
            default -> "text/javascript; charset=utf-8";
        };
    }

    private static boolean isPacked(String name) {
        return name.endsWith(".woff2");
    }

    /** In gzip form. */
    static byte[] pack(byte[] content) {
        var packed = new ByteArrayOutputStream();
        try (var stream = new GZIPOutputStream(packed)) {
            stream.write(content);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return packed.toByteArray();
    }

    /** Each style begins with the colours of the house, so that none has its own. */
    private static byte[] content(String name) {
        var content = read(name);
        return name.endsWith(".css") ? joined(read("tokens.css"), content) : content;
    }

    private static byte[] joined(byte[] first, byte[] second) {
        var both = Arrays.copyOf(first, first.length + second.length);
        System.arraycopy(second, 0, both, first.length, second.length);
        return both;
    }

    private static byte[] read(String name) {
        var folder = isPacked(name) ? "fonts" : name.endsWith(".js") ? "library" : "assets";
        try (var stream = Assets.class.getResourceAsStream("/cornerbook/app/" + folder + "/" + name)) {
            if (stream == null) {
                throw new IllegalStateException("the program lacks its own file " + folder + "/" + name);
            }
            return stream.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
