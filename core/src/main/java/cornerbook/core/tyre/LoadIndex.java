package cornerbook.core.tyre;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.tyre.TyreSaid.Input;
import java.util.List;
import java.util.stream.Stream;

/**
 * Load index of a tyre: the mass that it may carry at the speed of its symbol.
 *
 * @param number 0 to 150
 */
public record LoadIndex(int number) {
    /** Load-capacity indices, kg: 50 to 125 UN R30, the others published tables; 135 from memory, as one table prints 2190. */
    private static final List<Double> CAPACITY_KG = Stream.<Number>of(
                    45, 46.2, 47.5, 48.7, 50, 51.5, 53, 54.5, 56, 58, // 0 to 9
                    60, 61.5, 63, 65, 67, 69, 71, 73, 75, 77.5, // 10 to 19
                    80, 82.5, 85, 87.5, 90, 92.5, 95, 97.5, 100, 103, // 20 to 29
                    106, 109, 112, 115, 118, 121, 125, 128, 132, 136, // 30 to 39
                    140, 145, 150, 155, 160, 165, 170, 175, 180, 185, // 40 to 49
                    190, 195, 200, 206, 212, 218, 224, 230, 236, 243, // 50 to 59
                    250, 257, 265, 272, 280, 290, 300, 307, 315, 325, // 60 to 69
                    335, 345, 355, 365, 375, 387, 400, 412, 425, 437, // 70 to 79
                    450, 462, 475, 487, 500, 515, 530, 545, 560, 580, // 80 to 89
                    600, 615, 630, 650, 670, 690, 710, 730, 750, 775, // 90 to 99
                    800, 825, 850, 875, 900, 925, 950, 975, 1000, 1030, // 100 to 109
                    1060, 1090, 1120, 1150, 1180, 1215, 1250, 1285, 1320, 1360, // 110 to 119
                    1400, 1450, 1500, 1550, 1600, 1650, 1700, 1750, 1800, 1850, // 120 to 129
                    1900, 1950, 2000, 2060, 2120, 2180, 2240, 2300, 2360, 2430, // 130 to 139
                    2500, 2575, 2650, 2725, 2800, 2900, 3000, 3075, 3150, 3250, // 140 to 149
                    3350) // 150
            .map(Number::doubleValue)
            .toList();

    /** Refuses a number outside the table. */
    public LoadIndex {
        check(Input.LOAD_INDEX, number, 0, CAPACITY_KG.size() - 1, "");
    }

    /** Load capacity, kg. */
    public double capacityKg() {
        return CAPACITY_KG.get(number);
    }
}
