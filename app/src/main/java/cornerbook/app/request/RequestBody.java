package cornerbook.app.request;

import io.helidon.common.buffers.DataReader;
import io.helidon.webserver.http.ServerRequest;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;

/** What a browser sent. */
public final class RequestBody {
    private static final Logger LOG = Logger.getLogger(RequestBody.class.getName());

    private RequestBody() {}

    /**
     * The bytes of a request, none when it has no body; empty when they are more than these. The rest is read all the same,
     * up to what the server takes at all: a browser that is cut off while it sends never sees the answer.
     *
     * @throws PageException when it ends too early, or its chunks have no size (RFC 9112, section 7.1)
     */
    public static Optional<byte[]> read(ServerRequest request, int largestBytes) {
        if (!request.content().hasEntity()) {
            return Optional.of(new byte[0]);
        }
        try (var stream = request.content().inputStream()) {
            var bytes = stream.readNBytes(largestBytes);
            return stream.transferTo(OutputStream.nullOutputStream()) > 0 ? Optional.empty() : Optional.of(bytes);
        } catch (IOException | IllegalArgumentException | DataReader.InsufficientDataAvailableException e) {
            LOG.log(Level.FINE, "A request could not be read", e);
            throw new PageException(400, new RequestSaid.CutOff());
        }
    }
}
