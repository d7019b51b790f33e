package cornerbook.app.desk.days;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import cornerbook.app.book.appointment.Appointment;
import cornerbook.app.book.appointment.AppointmentState;
import cornerbook.app.book.appointment.Plan;
import cornerbook.core.days.PlannedWork;
import cornerbook.words.Language;
import cornerbook.words.Reader;
import cornerbook.words.UnitSystem;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What is written is read back by biweekly, a general parser of iCalendar, and held against what RFC 5545 prints. Cars are invented. */
class CalendarFeedReferenceTest {
    private static final ZoneId ZONE = ZoneId.of("America/Toronto");
    private static final LocalDate DAY = LocalDate.of(2026, 11, 27);
    private static final Instant MADE_AT = Instant.parse("2026-11-20T15:04:05.678Z");

    /** RFC 5545, section 3.3.11. */
    @Test
    void textIsEscapedAsPrinted() {
        assertThat(CalendarFeed.escape("Project XYZ Final Review\nConference Room - 3B\r\nCome Prepared."))
                .isEqualTo("Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.");
        assertThat(CalendarFeed.escape("a\\b;c,d\u0007\te")).isEqualTo("a\\\\b\\;c\\,d\te");
    }

    /** RFC 5545, section 3.1: 75 octets without the end of the line; what is long goes on after a space. */
    @ParameterizedTest
    @CsvSource({"a, 75, 1", "a, 76, 2", "é, 37, 1", "é, 38, 2", "é, 75, 3", "\uD83D\uDE97, 18, 1", "\uD83D\uDE97, 19, 2"
    })
    void longLinesAreFoldedBetweenLetters(String letter, int times, int lines) {
        var line = letter.repeat(times);
        var folded = CalendarFeed.fold(line);
        assertThat(folded.split("\r\n", -1))
                .hasSize(lines)
                .allSatisfy(each ->
                        assertThat(each.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(75));
        assertThat(folded.replace("\r\n ", "")).isEqualTo(line);
    }

    @Test
    void aParserReadsWhatWasAgreed() {
        var plate = "ÉTÉ\\ 12;3, " + "lång ".repeat(30) + "end";
        var event = read(appointment(AppointmentState.BOOKED, 3, DAY, LocalTime.of(9, 30), plate));
        assertThat(event.getUid().getValue()).isEqualTo("8a1d-7@cornerbook");
        assertThat(event.getSequence().getValue()).isEqualTo(3);
        assertThat(event.getDateTimeStamp().getValue().toInstant()).isEqualTo("2026-11-20T15:04:05Z");
        assertThat(event.getSummary().getValue())
                .isEqualTo(plate + " changement de roues, freins dégrippés et mesurés");
        assertThat(event.getDescription()).isNull();
    }

    /** Offsets of Toronto are those of the tz database: 5 h in winter, 4 h in summer, changed on 8 March and 1 November 2026. */
    @ParameterizedTest
    @CsvSource({
        "2026-11-27, 09:30, 2026-11-27T14:30:00Z, 2026-11-27T16:35:00Z",
        "2026-07-01, 09:30, 2026-07-01T13:30:00Z, 2026-07-01T15:35:00Z",
        "2026-11-27, 23:00, 2026-11-28T04:00:00Z, 2026-11-28T06:05:00Z",
        "2026-03-08, 01:00, 2026-03-08T06:00:00Z, 2026-03-08T08:05:00Z",
        "2026-11-01, 00:30, 2026-11-01T04:30:00Z, 2026-11-01T06:35:00Z"
    })
    void timesAreThoseOfTheShopsZone(LocalDate day, LocalTime time, Instant start, Instant end) {
        var event = read(appointment(AppointmentState.BOOKED, 0, day, time, "QX 1093"));
        assertThat(event.getDateStart().getValue().hasTime()).isTrue();
        assertThat(event.getDateStart().getValue().toInstant()).isEqualTo(start);
        assertThat(event.getDateEnd().getValue().toInstant()).isEqualTo(end);
    }

    @Test
    void withoutATimeItIsTheWholeDay() {
        var event = read(appointment(AppointmentState.BOOKED, 0, DAY, null, "QX 1093"));
        assertThat(event.getDateStart().getValue().hasTime()).isFalse();
        assertThat(event.getDateStart().getValue().getRawComponents().toString(false, false))
                .isEqualTo("20261127");
        assertThat(event.getDateEnd()).as("one day then, section 3.6.1").isNull();
    }

    @ParameterizedTest
    @EnumSource(AppointmentState.class)
    void statusIsOneOfThree(AppointmentState state) {
        var status = read(appointment(state, 0, DAY, null, "QX 1093")).getStatus();
        assertThat(List.of(status.isTentative(), status.isConfirmed(), status.isCancelled()))
                .isEqualTo(
                        switch (state) {
                            case ASKED -> List.of(true, false, false);
                            case BOOKED, CAME -> List.of(false, true, false);
                            case MISSED, CALLED_OFF -> List.of(false, false, true);
                        });
    }

    /** The one event of a calendar that is as the standard has it. */
    private static VEvent read(Appointment appointment) {
        var reader = new Reader(Language.FRENCH, UnitSystem.METRIC, ZoneOffset.UTC);
        var text = CalendarFeed.of("Rendez-vous, Ines", List.of(appointment), ZONE, reader);
        assertThat(Arrays.stream(text.split("\r\n", -1)))
                .allSatisfy(
                        line -> assertThat(line).hasSizeLessThanOrEqualTo(75).doesNotContain("\n", "\r"));
        ICalendar calendar = Biweekly.parse(text).first();
        assertThat(calendar.validate(ICalVersion.V2_0).getWarnings()).isEmpty();
        assertThat(calendar.getVersion()).isEqualTo(ICalVersion.V2_0);
        assertThat(calendar.getNames())
                .singleElement()
                .satisfies(name -> assertThat(name.getValue()).isEqualTo("Rendez-vous, Ines"));
        assertThat(calendar.getEvents()).hasSize(1);
        return calendar.getEvents().getFirst();
    }

    private static Appointment appointment(
            AppointmentState state, int turn, LocalDate day, @Nullable LocalTime time, String plate) {
        return new Appointment(
                "8a1d-7",
                turn,
                new Appointment.Car(
                        "demo-03",
                        "Nivaro Lumen",
                        plate,
                        "demo-customer",
                        "Customer (invented)",
                        "418-555-0199",
                        false),
                state,
                new Plan(day, time, PlannedWork.WHEELS_AND_BRAKES, 125, "H-1", "Ines", "call the customer"),
                new Appointment.Because("parts", "Ines", MADE_AT),
                null);
    }
}
