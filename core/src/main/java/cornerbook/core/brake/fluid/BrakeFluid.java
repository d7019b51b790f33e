package cornerbook.core.brake.fluid;

import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Refused;
import java.util.Arrays;
import java.util.stream.Collectors;

/**
 * Grade of brake fluid with the lowest boiling points of its grade: dry as it comes from a sealed container, wet after it
 * took up water to 3.70 ± 0.05 % by mass. Source: 49 CFR 571.116, S5.1.1 (dry) and S5.1.2 (wet).
 */
public enum BrakeFluid {
    DOT_3("DOT 3", 205, 140),
    DOT_4("DOT 4", 230, 155),
    DOT_5("DOT 5", 260, 180),
    DOT_5_1("DOT 5.1", 260, 180);

    private final String label;
    private final double minimumDryBoilingPointC;
    private final double minimumWetBoilingPointC;

    BrakeFluid(String label, double minimumDryBoilingPointC, double minimumWetBoilingPointC) {
        this.label = label;
        this.minimumDryBoilingPointC = minimumDryBoilingPointC;
        this.minimumWetBoilingPointC = minimumWetBoilingPointC;
    }

    /**
     * The grade that the cap says, as "DOT 4".
     *
     * @throws IllegalArgumentException with one sentence when there is no such grade
     */
    public static BrakeFluid parse(String label) {
        return Arrays.stream(values())
                .filter(grade -> grade.label.equals(label))
                .findFirst()
                .orElseThrow(() -> new Refused(new NoSuchGrade(
                        Quoted.of(label),
                        Arrays.stream(values()).map(BrakeFluid::label).collect(Collectors.joining(", ")))));
    }

    /** The grade as the cap says it, as "DOT 5.1". */
    public String label() {
        return label;
    }

    /** Lowest boiling point of new fluid, °C. */
    public double minimumDryBoilingPointC() {
        return minimumDryBoilingPointC;
    }

    /** Lowest boiling point of fluid that took up water, °C. */
    public double minimumWetBoilingPointC() {
        return minimumWetBoilingPointC;
    }

    /**
     * Whether fluid from a car boils below the wet minimum of its grade, which is to say that it has to be changed (common practice, no
     * source; the rule itself binds new fluid only).
     *
     * @param boilingPointC measured, 50 to 350 °C
     */
    public boolean boilsTooEarly(double boilingPointC) {
        if (!(boilingPointC >= 50 && boilingPointC <= 350)) {
            throw new IllegalArgumentException(
                    "boiling point is %s °C, expected 50 to 350 °C".formatted(boilingPointC));
        }
        return boilingPointC < minimumWetBoilingPointC;
    }
}
