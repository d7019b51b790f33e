package cornerbook.app.picture;

import cornerbook.core.say.Amount;
import cornerbook.words.Reader;
import java.util.List;
import java.util.stream.LongStream;

/**
 * A straight scale from one place of a picture to another, with ticks that are round in the unit of one person.
 *
 * @param from coordinate of {@code low}
 * @param to coordinate of {@code high}
 * @param low in {@code bookUnit}
 * @param high in {@code bookUnit}, above {@code low}
 * @param bookUnit empty for a bare number
 */
public record Axis(double from, double to, double low, double high, String bookUnit, Reader reader) {
    private static final double[] ROUND = {1, 2, 5, 10};
    /** More than a tick needs: sums of tenths have no tail of nines. */
    private static final int TICK_DIGITS = 6;


    /** A round value in the person's unit, without the unit, and its place. */
    public record Tick(double place, String words) {}

    /** Place of a value of the book; beyond the scale its end. */
    public double place(double value) {
        return from + (to - from) * Math.clamp((value - low) / (high - low), 0, 1);
    }

    /** Up to {@code most} + 1 ticks, which are 1, 2 or 5 times a power of ten apart. */
    public List<Tick> ticks(int most) {
        double first = read(low);
        double last = read(high);
        double power = Math.pow(10, Math.floor(Math.log10((last - first) / most)));
        double step = 0;
        for (int i = 0; i < ROUND.length && step * most < last - first; i++) {
            step = ROUND[i] * power;
        }
        double apart = step;
        return LongStream.rangeClosed((long) Math.ceil(first / apart), (long) Math.floor(last / apart))
                .mapToObj(count -> new Tick(
                        from + (to - from) * (count * apart - first) / (last - first),
                        reader.say(Amount.significant(count * apart, "", TICK_DIGITS))))
                .toList();
    }

    public String unit() {
        return bookUnit.isEmpty() ? "" : reader.unit(bookUnit);
    }

    private double read(double value) {
        return bookUnit.isEmpty() ? value : reader.units().in(value, bookUnit);
    }
}
