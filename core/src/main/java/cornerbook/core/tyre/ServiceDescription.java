package cornerbook.core.tyre;

import cornerbook.core.say.Refused;
import org.jspecify.annotations.Nullable;

/**
 * Load index and speed symbol together, as "98V" on the sidewall; a commercial tyre has a second index for twin fitting, as
 * "109/107R".
 *
 * @param twinLoadIndex per tyre when two stand side by side; null when there is none, else not above {@code loadIndex}
 */
public record ServiceDescription(
        LoadIndex loadIndex, @Nullable LoadIndex twinLoadIndex, SpeedSymbol speedSymbol) {
    public ServiceDescription {
        if (twinLoadIndex != null && twinLoadIndex.number() > loadIndex.number()) {
            throw new Refused(new TyreSaid.TwinAboveSingle(twinLoadIndex.number(), loadIndex.number()));
        }
    }

    /** Of a tyre for single fitting. */
    public ServiceDescription(LoadIndex loadIndex, SpeedSymbol speedSymbol) {
        this(loadIndex, null, speedSymbol);
    }

    @Override
    public String toString() {
        return loadIndex.number() + (twinLoadIndex == null ? "" : "/" + twinLoadIndex.number()) + speedSymbol.name();
    }
}
