package cornerbook.core.tyre;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import cornerbook.core.tyre.TyreSaid.Caution;
import cornerbook.core.tyre.TyreSaid.Computed;
import cornerbook.core.tyre.TyreSaid.Origin;
import cornerbook.core.why.Basis;
import cornerbook.core.why.Step;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What load index and speed symbol of a size allow. A passenger tyre by the tables of UN R30, a light-truck tyre by
 * {@link LightTruckSize}; of a temporary spare, and of a light-truck size that is not listed, the load is left out and that
 * is said.
 */
record SizeLoad(
        @Nullable Double capacityKg,
        @Nullable Double twinCapacityKg,
        @Nullable Double highestKmh,
        @Nullable Double capacityAtHighestKg,
        @Nullable Double referenceKpa,
        List<Said> cautions,
        List<Step> steps) {
    private static final double KPA_PER_PSI = 6.894757293168;

    /** Of temporary spares as makers ask it: owner's manuals of three makers, 420 kPa (60 psi) and 80 km/h. */
    private static final double SPARE_KPA = 420;

    private static final double SPARE_KMH = 80;

    SizeLoad {
        cautions = List.copyOf(cautions);
        steps = List.copyOf(steps);
    }

    static SizeLoad of(TyreSize size) {
        var service = size.service();
        var referenceKpa = referenceKpa(size);
        if (RimRange.find(size).isEmpty()) {
            return unknown(ownTables(size), null);
        }
        if (service == null) {
            return unknown(Caution.SERVICE_NOT_KNOWN, referenceKpa);
        }
        var index = service.loadIndex();
        var twin = service.twinLoadIndex();
        if (!size.lightTruck()) {
            return of(
                    service,
                    index.capacityKg(),
                    twin == null ? null : twin.capacityKg(),
                    referenceKpa,
                    size.use().equals("HL") ? Origin.EXTRA_LOAD_FROM_MEMORY : Origin.PUBLISHED_PRESSURES);
        }
        return LightTruckSize.find(size, index)
                .map(listed -> of(
                        service,
                        listed.capacityKg(),
                        twin == null ? null : listed.twinCapacityKg(),
                        listed.pressureKpa(),
                        Origin.LIGHT_TRUCK_SHEETS))
                .orElseGet(() -> unknown(new TyreSaid.OtherLoadRange(size.designation(), index.number()), null));
    }

    private static SizeLoad unknown(Said why, @Nullable Double referenceKpa) {
        return new SizeLoad(
                null,
                null,
                null,
                null,
                referenceKpa,
                List.of(why),
                referenceKpa == null ? List.of() : List.of(reference(referenceKpa, Origin.PUBLISHED_PRESSURES)));
    }

    private static SizeLoad of(
            ServiceDescription service,
            double capacityKg,
            @Nullable Double twinKg,
            @Nullable Double referenceKpa,
            Origin origin) {
        var symbol = service.speedSymbol();
        double highestKmh = symbol.highestKmh();
        double share = symbol.loadShare(highestKmh);
        var steps = new ArrayList<Step>();
        steps.add(capacity(Computed.CAPACITY, service.loadIndex(), capacityKg, origin));
        var twin = service.twinLoadIndex();
        if (twin != null && twinKg != null) {
            steps.add(capacity(Computed.TWIN_CAPACITY, twin, twinKg, origin));
        }
        steps.add(new Step(
                Computed.HIGHEST_SPEED,
                new TyreSaid.SymbolIs(symbol.name()),
                highestKmh,
                "km/h",
                Origin.SPEED_SYMBOLS));
        steps.add(new Step(
                Computed.CAPACITY_AT_SPEED,
                new TyreSaid.CapacityTimes(Amount.significant(share, "", 4)),
                capacityKg * share,
                "kg",
                symbol == SpeedSymbol.Y ? Origin.LOAD_VARIATION_FROM_MEMORY : Origin.LOAD_VARIATION));
        if (referenceKpa != null) {
            steps.add(reference(referenceKpa, origin));
        }
        return new SizeLoad(capacityKg, twinKg, highestKmh, capacityKg * share, referenceKpa, List.of(), steps);
    }

    private static Step reference(double referenceKpa, Origin origin) {
        return new Step(Computed.REFERENCE_PRESSURE, Basis.TABLE, referenceKpa, "kPa", origin);
    }

    /** Why the tables for passenger cars do not serve for a size. */
    static Said ownTables(TyreSize size) {
        return size.temporary()
                ? new TyreSaid.TemporarySpare(new Amount(SPARE_KPA, "kPa", 0), new Amount(SPARE_KMH, "km/h", 0))
                : new TyreSaid.LightTruckNotListed(size.designation());
    }

    private static Step capacity(Said what, LoadIndex index, double capacityKg, Origin origin) {
        boolean printed = index.number() >= 50 && index.number() <= 125;
        return new Step(
                what,
                new TyreSaid.LoadIndexIs(index.number()),
                capacityKg,
                "kg",
                origin == Origin.LIGHT_TRUCK_SHEETS
                        ? origin
                        : printed ? Origin.LOAD_INDICES : Origin.PUBLISHED_LOAD_INDICES);
    }

    /** Null for light-truck and commercial tyres and temporary spares, which have a pressure of their own on the sidewall. */
    private static @Nullable Double referenceKpa(TyreSize size) {
        boolean extra = size.extraLoad() || size.use().equals("HL");
        if (size.lightTruck() || size.temporary() || size.commercial()) {
            return null;
        }
        return size.use().equals("P") ? KPA_PER_PSI * (extra ? 41 : 35) : extra ? 290.0 : 250.0;
    }
}
