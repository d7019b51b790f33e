package cornerbook.core.tyre.judge;

import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.SetOf;
import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Margin;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** What is said about the tyres of a car by their sidewalls, and about wheels on its hubs. */
public interface SidewallSaid extends Said {
    /** Names of evidence. */
    enum Label implements SidewallSaid {
        AGE_AT_VISIT,
        INSPECTED_FROM,
        REPLACED_AT,
        SERVICE_DESCRIPTION,
        PERMITTED_AXLE_LOAD,
        PLACARD_ASKS,
        TYRE,
        OVERALL_DIAMETER,
        TRUE_SPEED,
        LARGER_BY_AT_MOST,
        HUB_AND_WHEEL
    }

    /** How it was come by, and where limits come from. */
    enum Ground implements SidewallSaid {
        END_OF_SEASON,
        SIDEWALL_INDICES,
        SIDEWALL_LIGHT_TRUCK,
        SIDEWALL_TABLES,
        SPECIFICATION,
        SPECIFICATION_OUTRANKS,
        PLACARD,
        SHOWN_BY_DIAMETERS,
        MAKERS_DIFFER,
        AXLE_LOAD_RULE,
        AXLE_LOAD_RULE_LIGHT_TRUCK,
        AXLE_LOAD_RULE_ON_TRUCK,
        LOAD_INDEX_RULE,
        SPEED_SYMBOL_RULE,
        SPEEDOMETER_RULE,
        AS_ENTERED,
        MANUFACTURER_OUTRANKS
    }

    record TinNotRead(String tags) implements SidewallSaid {}

    record AgeUnread(String tag, Said why) implements SidewallSaid {}

    record ThreeDigits(String tag, Quoted written) implements SidewallSaid {}

    record DatedLater(String tag, String code, LocalDate week) implements SidewallSaid {}

    record OldestTyre(SeasonKind season, String tag, Amount years, Amount yearsThen, LocalDate until)
            implements SidewallSaid {}

    /**
     * Whose age it is, at the beginning of a sentence.
     *
     * @param tag null for the oldest of the set
     */
    record TyreOf(@Nullable String tag, SetOf set) implements SidewallSaid {}

    record ReachesReplacement(TyreOf tyre, Amount years, LocalDate due) implements SidewallSaid {}

    record YoungEnough(TyreOf tyre) implements SidewallSaid {}

    record ReachesInspection(TyreOf tyre, Amount years, LocalDate from) implements SidewallSaid {}

    record Inspected(TyreOf tyre, Amount years, LocalDate due) implements SidewallSaid {}

    record TooOld(TyreOf tyre, Amount years) implements SidewallSaid {}

    record DateCodeOf(String tags) implements SidewallSaid {}

    record WeekOf(String code, LocalDate week) implements SidewallSaid {}

    record EndOfTin(Quoted written) implements SidewallSaid {}

    record Years(Amount years) implements SidewallSaid {}

    record OldestIs(String tag) implements SidewallSaid {}

    record AgeOn(LocalDate day) implements SidewallSaid {}

    record YearsReachedOn(Amount years, LocalDate day) implements SidewallSaid {}

    record AgeSource(Said citation) implements SidewallSaid {}

    record LoadUnread(String tag, Said why) implements SidewallSaid {}

    record CarriesTooLittle(String tag, Corner corner, Amount capacity, Amount half) implements SidewallSaid {}

    record CarriesTooLittlePlain(Corner corner) implements SidewallSaid {}

    record ServiceCarries(String service, Amount capacity) implements SidewallSaid {}

    record HalfOfAxle(Amount axle, Amount half) implements SidewallSaid {}

    /** A temporary spare, or a light-truck size that is not listed. */
    record LoadOnSidewall(String tag, String size, boolean temporary) implements SidewallSaid {}

    record OtherTables(String tag, String fitted, String placard) implements SidewallSaid {}

    record PlacardUnread(String tag, Said why) implements SidewallSaid {}

    record LowLoadIndex(String tag, Corner corner, int fitted, int asked) implements SidewallSaid {}

    record LowLoadIndexPlain(Corner corner) implements SidewallSaid {}

    record LowSpeedSymbol(String tag, Corner corner, String fitted, String asked) implements SidewallSaid {}

    record SlowWinterTyre(Corner corner, Amount highest) implements SidewallSaid {}

    record TooSlow(Corner corner, Amount highest) implements SidewallSaid {}

    /** The capacity is null where no table tells it. */
    record ServiceAllows(String service, @Nullable Amount capacity, Amount highest) implements SidewallSaid {}

    record OtherSize(Axle axle, String fitted, String placard, Margin circumference) implements SidewallSaid {}

    record Larger(Axle axle) implements SidewallSaid {}

    record OtherSizePlain(Axle axle, Amount shown, Amount real) implements SidewallSaid {}

    record Diameters(Amount fitted, Amount placard) implements SidewallSaid {}

    record RealWhenShown(Amount real, Amount shown) implements SidewallSaid {}

    record DoesNotFit(Corner corner, String tag, Said why) implements SidewallSaid {}

    record NeedsFasteners(Corner corner) implements SidewallSaid {}

    record DoesNotBelong(Corner corner) implements SidewallSaid {}
}
