package cornerbook.core.tyre;

/** Load index and speed symbol together, as "98V" on the sidewall. */
public record ServiceDescription(LoadIndex loadIndex, SpeedSymbol speedSymbol) {
    /** Mass that the tyre may carry at a speed, kg; the speed is 0 to the symbol's highest, km/h. */
    public double capacityKg(double speedKmh) {
        return loadIndex.capacityKg() * speedSymbol.loadShare(speedKmh);
    }

    @Override
    public String toString() {
        return loadIndex.number() + speedSymbol.name();
    }
}
