package cornerbook.app.web;

import io.helidon.webserver.http.ServerRequest;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.Optional;

/** What a browser sent. */
public final class RequestBody {
    private RequestBody() {}

    /**
     * The bytes of a request, none when it has no body; empty when they are more than these. The rest is read all the same,
     * up to what the server takes at all: a browser that is cut off while it sends never sees the answer.
     */
    public static Optional<byte[]> read(ServerRequest request, int largestBytes) {
        if (!request.content().hasEntity()) {
            return Optional.of(new byte[0]);
        }
        try (var stream = request.content().inputStream()) {
            var bytes = stream.readNBytes(largestBytes);
            return stream.transferTo(OutputStream.nullOutputStream()) > 0 ? Optional.empty() : Optional.of(bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
