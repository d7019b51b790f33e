package cornerbook.core.brake.disc;

import cornerbook.core.quantity.Range;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * The parts of hub and disc in the installed runout, told apart, and the stud position with the least. With the disc moved
 * on by k of n studs the installed runout is I(k) = H + D turned by 360° k/n, so that two positions give
 *
 * <pre>
 *   D = (I(k) − I(0)) / (e^(i 360° k/n) − 1),   H = I(0) − D              (1)
 * </pre>
 *
 * Re-index before a disc is condemned: makers' manuals ask for it, and give installed limits of 0.03 to 0.13 mm. Assumes clean
 * faces, all nuts at torque, and the dial at the same radius each time.
 *
 * @param hub the hub's part at the dial's radius
 * @param disc the disc's part in position 0
 * @param studs 3 to 10
 */
public record HubAndDiscRunout(Runout hub, Runout disc, int studs) {
    public HubAndDiscRunout {
        Range.check("studs", studs, 3, 10, "");
    }

    /**
     * From two measurements of the installed disc.
     *
     * @param moved the disc moved on by {@code by} studs, in the direction in which the studs are numbered
     * @param by 1 to studs − 1
     */
    public static HubAndDiscRunout fromTwoPositions(Runout first, Runout moved, int by, int studs) {
        Range.check("studs", studs, 3, 10, "");
        Range.check("studs moved on by", by, 1, studs - 1, "");
        double angle = 2 * Math.PI * by / studs;
        double real = Math.cos(angle) - 1;
        double imaginary = Math.sin(angle);
        double square = real * real + imaginary * imaginary;
        var change = moved.minus(first);
        var disc = new Runout(
                (change.cosineMm() * real + change.sineMm() * imaginary) / square,
                (change.sineMm() * real - change.cosineMm() * imaginary) / square);
        return new HubAndDiscRunout(first.minus(disc), disc, studs);
    }

    /**
     * From the installed disc and the bare hub face. A tilt grows with the radius, so the hub's reading is scaled.
     *
     * @param hubRadiusMm where the dial stood on the hub face
     * @param discRadiusMm where it stood on the disc
     */
    public static HubAndDiscRunout fromHubFace(
            Runout installed, Runout hubFace, double hubRadiusMm, double discRadiusMm, int studs) {
        Range.check("radius on the hub", hubRadiusMm, 20, 200, "mm");
        Range.check("radius on the disc", discRadiusMm, hubRadiusMm, 300, "mm");
        double scale = discRadiusMm / hubRadiusMm;
        var hub = new Runout(scale * hubFace.cosineMm(), scale * hubFace.sineMm());
        return new HubAndDiscRunout(hub, installed.minus(hub), studs);
    }

    /** The installed runout with the disc moved on by this many studs. */
    public Runout installed(int movedBy) {
        return hub.plus(disc.turned(360.0 * movedBy / studs));
    }

    /** How many studs to move the disc on for the least installed runout; 0 leaves it where it is. */
    public int bestMove() {
        return IntStream.range(0, studs)
                .boxed()
                .min(Comparator.comparingDouble(move -> installed(move).totalMm()))
                .orElseThrow();
    }
}
