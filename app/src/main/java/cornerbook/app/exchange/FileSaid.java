package cornerbook.app.exchange;

import cornerbook.app.text.UnfitCharacter;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What people are told of a file that cannot be taken: what stands there, and what was expected. */
interface FileSaid extends Said {
    /**
     * Of a visit file.
     *
     * @param file null for a text
     */
    record FileTooLarge(@Nullable String file) implements FileSaid {}

    record NoUtf8(String file) implements FileSaid {}

    record Unreadable(String file) implements FileSaid {}

    record Empty() implements FileSaid {}

    record TooDeep() implements FileSaid {}

    /**
     * No JSON, as the parser says.
     *
     * @param what the parser's own words
     */
    record NoJson(String what) implements FileSaid {}

    record NoJsonAt(int line, int column, String what) implements FileSaid {}

    record Missing(String property) implements FileSaid {}

    record NoProperty(String property) implements FileSaid {}

    record Misfit(String found, Said expected) implements FileSaid {}

    record OneOf(List<Said> choices) implements FileSaid {}

    /** The first of many, and how many more the schema lists. */
    record OneOfMany(List<Said> choices, int more) implements FileSaid {}

    record YearMonthDay() implements FileSaid {}

    record SomeText() implements FileSaid {}

    record AtMostCharacters(int most) implements FileSaid {}

    record AtMostItems(int most) implements FileSaid {}

    record AtLeast(Amount least) implements FileSaid {}

    record AtMost(Amount most) implements FileSaid {}

    /**
     * Refused before anything counts with it.
     *
     * @param number null where its digits cannot be told
     */
    record TooLargeANumber(@Nullable String number) implements FileSaid {}

    record NotPrintable(UnfitCharacter character) implements FileSaid {}

    record NoDay(String written) implements FileSaid {}

    record NoMoment(String written) implements FileSaid {}

    record OutOfOrder(LocalDate date, LocalDate before) implements FileSaid {}

    record NoVisitOfCar(String visit) implements FileSaid {}

    record NoFastener(String tick) implements FileSaid {}

    record NotAtThisPlace(String reading) implements FileSaid {}

    record IsReading(String id) implements FileSaid {}

    record DoneWithReason() implements FileSaid {}

    record NoReading(String id) implements FileSaid {}

    record TwoPeople(String reading) implements FileSaid {}

    record StandsTwice(String id) implements FileSaid {}

    record NoBase64() implements FileSaid {}

    record OtherDigest(String digest) implements FileSaid {}

    record SpreadsheetUnread(String what) implements FileSaid {}

    record ClimateUnfit(UnfitCharacter character) implements FileSaid {}

    record ClimateNoCsv(String what) implements FileSaid {}

    record ClimateHead(String was, String expected) implements FileSaid {}

    record ClimateRows(int rows) implements FileSaid {}

    record ClimateRow(int line, int columns, int expected) implements FileSaid {}

    record ClimateCell(int line, String column, String was, Said expected) implements FileSaid {}

    record ClimateMonth(int line, Said problem) implements FileSaid {}

    record AsInLine2(String first) implements FileSaid {}

    record NumberOfDegrees() implements FileSaid {}

    /** Of a data sheet of a kind of car. */
    record KindTooLarge() implements FileSaid {}

    record KindEmpty() implements FileSaid {}

    record NoPropertyOfKind(String property) implements FileSaid {}

    record KindFormat(String format) implements FileSaid {}

    record KindText(String property, int most) implements FileSaid {}

    record KindVin(String written) implements FileSaid {}

    record KindName(String written) implements FileSaid {}

    /** What each car has for itself stood in the sheet of its kind. */
    record OfOneCar() implements FileSaid {}
}
