package cornerbook.core.tyre;

import java.util.List;

/**
 * Load index of a tyre: the mass that it may carry at the speed of its symbol.
 *
 * @param number 50 to 125, the range of UN R30's table that passenger cars and vans use
 */
public record LoadIndex(int number) {
    private static final int LOWEST = 50;

    /** UN R30, table of load-capacity indices, kg, from index 50 on. */
    private static final List<Integer> CAPACITY_KG = List.of(
            190, 195, 200, 206, 212, 218, 224, 230, 236, 243, // 50 to 59
            250, 257, 265, 272, 280, 290, 300, 307, 315, 325, // 60 to 69
            335, 345, 355, 365, 375, 387, 400, 412, 425, 437, // 70 to 79
            450, 462, 475, 487, 500, 515, 530, 545, 560, 580, // 80 to 89
            600, 615, 630, 650, 670, 690, 710, 730, 750, 775, // 90 to 99
            800, 825, 850, 875, 900, 925, 950, 975, 1000, 1030, // 100 to 109
            1060, 1090, 1120, 1150, 1180, 1215, 1250, 1285, 1320, 1360, // 110 to 119
            1400, 1450, 1500, 1550, 1600, 1650); // 120 to 125

    /** Refuses a number outside the table. */
    public LoadIndex {
        int highest = LOWEST + CAPACITY_KG.size() - 1;
        if (number < LOWEST || number > highest) {
            throw new IllegalArgumentException(
                    "load index is %d, expected %d to %d".formatted(number, LOWEST, highest));
        }
    }

    /** Load capacity, kg. */
    public double capacityKg() {
        return CAPACITY_KG.get(number - LOWEST);
    }
}
