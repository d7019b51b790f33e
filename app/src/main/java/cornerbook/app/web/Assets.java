package cornerbook.app.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Style, script and fonts, held in memory. Their address carries a digest of them all, so it may be kept for good. */
final class Assets {
    private static final Map<String, String> TYPE_OF = Map.of(
            "cornerbook.css", "text/css; charset=utf-8",
            "next-field.mjs", "text/javascript; charset=utf-8",
            "fill-wheels.mjs", "text/javascript; charset=utf-8",
            "unsaved.mjs", "text/javascript; charset=utf-8",
            "b612-400.woff2", "font/woff2",
            "b612-700.woff2", "font/woff2");

    /** One file as it is sent. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Asset(String type, byte[] content) {}

    private final Map<String, Asset> assets = new LinkedHashMap<>();
    private final String basePath;

    Assets() {
        try {
            var digest = MessageDigest.getInstance("SHA-256");
            for (var name : TYPE_OF.keySet().stream().sorted().toList()) {
                var content = read(name);
                digest.update(content);
                assets.put(name, new Asset(TYPE_OF.getOrDefault(name, ""), content));
            }
            basePath = "/assets/" + HexFormat.of().formatHex(digest.digest(), 0, 8);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    String basePath() {
        return basePath;
    }

    Optional<Asset> find(String name) {
        return Optional.ofNullable(assets.get(name));
    }

    private static byte[] read(String name) {
        var folder = name.endsWith(".woff2") ? "fonts" : "assets";
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
