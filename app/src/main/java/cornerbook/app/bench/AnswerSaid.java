package cornerbook.app.bench;

import cornerbook.core.air.AirSaid;
import cornerbook.core.air.LeakRate;
import cornerbook.core.air.SensorCheck;
import cornerbook.core.battery.HealthTest;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.cost.CostSaid;
import cornerbook.core.cost.TyreCosts;
import cornerbook.core.cost.renew.RenewWay;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Chance;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import cornerbook.core.tyre.TyreAge;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** The lines of the calculators' answers. */
public interface AnswerSaid extends Said {
    /** A quantity in the book's unit with that of the trade beside it. */
    record InBothUnits(Amount metric, Amount trade) implements AnswerSaid {}

    record ArmGoesUnder(Said spare) implements AnswerSaid {}

    record ArmStaysOut(Said needed) implements AnswerSaid {}

    /** How far the car clears what it drives over, or by how much it would touch. */
    record DrivesOver(Said room, boolean clears) implements AnswerSaid {}

    record RaiseTo(Said pads, Said under, boolean limited) implements AnswerSaid {}

    record ArmCarries(Corner corner, Said load, Amount share, Said most, Amount mostShare) implements AnswerSaid {}

    record HoistCarries(Said total, Amount share) implements AnswerSaid {}

    record CentreOfGravity(Said behindFrontAxle, Said insidePoints) implements AnswerSaid {}

    record SetNow(Said set, Said error, Said cold, Said standingAt) implements AnswerSaid {}

    record MonthReads(AirSaid.MonthName month, Said cold, Said coldAt, Said mild, Said mildAt) implements AnswerSaid {}

    record ToBeRead(Said at, Said pressure) implements AnswerSaid {}

    record ColdestMorning(Said at, Said pressure, Said warning, Said margin, Said error) implements AnswerSaid {}

    /** The days of a season for changing over, from the first to the last of them, and the one of least risk. */
    record ChangeBetween(boolean winter, LocalDate from, LocalDate until, LocalDate best, boolean byLaw)
            implements AnswerSaid {}

    /** Until when the law wants winter tyres on, or from when it lets them come off. */
    record LawfulDay(boolean winter, LocalDate day) implements AnswerSaid {}

    /** What a shop does in the weeks of a season. */
    record ShopWeeks(boolean winter, Listed weeks) implements AnswerSaid {}

    /** A week of it, by its first working day. */
    record WeekOfCars(LocalDate first, int cars) implements AnswerSaid {}

    /** The days that are left are too few. */
    record TooFewDays(boolean winter, int cars) implements AnswerSaid {}

    /** A place where it is hardly ever cold, or hardly ever warm. */
    record NoChangeOver(boolean winter) implements AnswerSaid {}

    record TemperaturesFrom(Said source) implements AnswerSaid {}

    record LoadNeeds(Said load, Said pressure) implements AnswerSaid {}

    record LoadCarried(Said at, Said load) implements AnswerSaid {}

    record Leaks(Said loss, Said error, LeakRate.Answer answer) implements AnswerSaid {}

    record SensorOff(Said difference, boolean tooLittle, SensorCheck.Answer answer) implements AnswerSaid {}

    record WarnsBelow(Said pressure) implements AnswerSaid {}

    record SensorBattery(Amount age, LocalDate endsOn) implements AnswerSaid {}

    record LearnsBy(Said how) implements AnswerSaid {}

    record TighteningPlaces(String places) implements AnswerSaid {}

    record SetWrench(Said setting, Said torque) implements AnswerSaid {}

    record ReadOnWrench(Said setting) implements AnswerSaid {}

    record BarEnds(Said least, Said most) implements AnswerSaid {}

    record WrenchDue(LocalDate on, int cyclesLeft) implements AnswerSaid {}

    record Clamps(String thread, Said strength, Amount leastFriction, Amount mostFriction, Said load, Said shareOfProof)
            implements AnswerSaid {}

    record ClampsByShortForm(Said state, Said load, Amount share) implements AnswerSaid {}

    record SizeIs(String size, Said diameter, Said sidewall) implements AnswerSaid {}

    record Rolls(Said circumference, Amount turnsPerKm, Amount turnsPerMile) implements AnswerSaid {}

    record Rims(Amount lowest, Amount highest, Amount measuring) implements AnswerSaid {}

    /**
     * What a load index carries.
     *
     * @param twin on each of two tyres side by side; null where the size says nothing of them
     */
    record LoadIndexCarries(int index, Said load, @Nullable Said twin) implements AnswerSaid {}

    record SpeedSymbolAllows(String symbol, Said speed, Said load) implements AnswerSaid {}

    record LoadIndexHoldsAt(Said pressure) implements AnswerSaid {}

    record RimNotJudged(Amount rim) implements AnswerSaid {}

    record OnRim(Amount rim, Said width, boolean permitted) implements AnswerSaid {}

    record SizesCompared(String other, String placard, Said diameter, Amount circumference) implements AnswerSaid {}

    record TrueSpeed(Said shown, Said real) implements AnswerSaid {}

    record TreadMoves(Said by, boolean farther, Amount turnsPerKm) implements AnswerSaid {}

    record MadeBefore2000(int years) implements AnswerSaid {}

    record MadeIn(int week, String year, LocalDate from, LocalDate to, Amount age) implements AnswerSaid {}

    /** The plant; null where no code of one was read. */
    record Plant(@Nullable String code) implements AnswerSaid {}

    /**
     * What the age asks for.
     *
     * @param due from when, or until when; null where it is not known
     */
    record AgeAsks(TyreAge.Answer answer, @Nullable LocalDate due, int mostYears) implements AnswerSaid {}

    record TreadsDiffer(Amount difference, boolean within, Amount limit) implements AnswerSaid {}

    record ThatIsCircumference(Said difference) implements AnswerSaid {}

    record CircumferencesDiffer(Said difference, boolean within, Said limit) implements AnswerSaid {}

    record TreadGoneDiffers(Amount difference) implements AnswerSaid {}

    record WheelMounts(boolean mounts) implements AnswerSaid {}

    record WheelEdges(Said inner, boolean innerOutward, Said outer, boolean outerInward) implements AnswerSaid {}

    record Charge(Amount share) implements AnswerSaid {}

    record Freezes(Amount at) implements AnswerSaid {}

    record OfItsRating(Amount share, HealthTest.Judgement judgement) implements AnswerSaid {}

    record OfItsCapacity(Amount share, HealthTest.Judgement judgement) implements AnswerSaid {}

    record RatingCompared(Amount rated, Said standard, Said other, Said otherStandard) implements AnswerSaid {}

    record LoadTested(Amount load, Amount volts, Amount least, boolean passes) implements AnswerSaid {}

    record ParkedFor(Amount from, int days) implements AnswerSaid {}

    record Stops(int stops, Said from, Said to, Amount apart, Axle axle, Said peak) implements AnswerSaid {}

    record CoolDown(Amount minutes) implements AnswerSaid {}

    /** How long a kind of tyre lasts and what it costs for {@code distance}, rubber alone and with energy, and until worn. */
    record TyreLasts(CostSaid.Which which, Said life, Said cost, Said distance, Said rubber, Said untilWorn)
            implements AnswerSaid {}

    record RollingTakes(CostSaid.Which which, Said energy, Said distance) implements AnswerSaid {}

    record Cheaper(TyreCosts.Cheaper cheaper, Said less, Said distance) implements AnswerSaid {}

    record PaidBack(Said from) implements AnswerSaid {}

    /** Two ways to go on with tyres, the cheapest and the next, and what is between them over {@code distance}. */
    record CheapestWay(RenewWay way, RenewWay next, Said less, Said distance) implements AnswerSaid {}

    /** What a way costs for {@code distance}, with the first purchase at {@code first} and the last after so many seasons. */
    record WayCosts(RenewWay way, Axle first, int seasons, Said cost, Said distance, Said thrownAway, Chance visit)
            implements AnswerSaid {}

    record WayClosed(RenewWay way, Said why) implements AnswerSaid {}

    record BrakeTakes(Corner corner, Said power, Said force, Said energy, Said distance) implements AnswerSaid {}

    record EvenlyWarm(Axle axle, Said difference) implements AnswerSaid {}

    /** What the hotter brake of an axle takes more than the other. */
    record TakesMore(Corner hotter, Corner cooler, Said difference, Said force, Said energy, Said distance)
            implements AnswerSaid {}

    /** Months at which guides are cleaned for the least cost a year, and the day when it is next; null where it is not known. */
    record CleanedEvery(
            Amount months, Said perYear, @Nullable LocalDate due) implements AnswerSaid {}

    record NoBestInterval(Amount months) implements AnswerSaid {}

    record NearlyAsCheap(Said months) implements AnswerSaid {}

    record CleanedYearly(Said perYear) implements AnswerSaid {}

    /** How likely a pad seizes within the interval, if there is one, and when that is too likely. */
    record SeizesWithin(
            @Nullable Chance chance,
            Amount riskMonths,
            Amount risk,
            @Nullable LocalDate due) implements AnswerSaid {}

    /** The wear across an axle's tyres is even, or tells too little. */
    record NothingPointedTo() implements AnswerSaid {}

    record PointedTo(Said cause, Chance chance) implements AnswerSaid {}

    /** How far the tyre that is lowest still goes. */
    record GoesOn(Said asItIs, Said setRight) implements AnswerSaid {}
}
