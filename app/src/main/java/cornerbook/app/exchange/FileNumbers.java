package cornerbook.app.exchange;

import cornerbook.core.finding.Problem;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;

/**
 * Refuses numbers that no quantity of a visit file comes near, before anything counts with them: JSON knows no bounds
 * (RFC 8259, section 6), whole numbers of the machine do.
 */
final class FileNumbers {
    private static final double LARGEST = 1e12;

    private FileNumbers() {}

    /** One problem for each number that is too large. */
    static List<Problem> check(JsonNode root) {
        var problems = new ArrayList<Problem>();
        if (hasTooLarge(root)) {
            check(root, "", problems);
        }
        return problems;
    }

    /** Which hardly any file has: only then is it worth a pointer to each value. */
    private static boolean hasTooLarge(JsonNode node) {
        if (node.isContainer()) {
            for (var value : node.values()) {
                if (hasTooLarge(value)) {
                    return true;
                }
            }
            return false;
        }
        return node.isNumber() && isTooLarge(size(node));
    }

    private static double size(JsonNode number) {
        return Math.abs(number.asDouble(Double.POSITIVE_INFINITY));
    }

    private static boolean isTooLarge(double size) {
        return !(size < LARGEST);
    }

    private static void check(JsonNode node, String where, List<Problem> problems) {
        if (node.isObject()) {
            node.properties()
                    .forEach(member ->
                            check(member.getValue(), where + "/" + VisitFileSchema.escaped(member.getKey()), problems));
        } else if (node.isArray()) {
            int place = 0;
            for (var element : node) {
                check(element, where + "/" + place++, problems);
            }
        } else if (node.isNumber()) {
            double size = size(node);
            if (isTooLarge(size) && problems.size() < VisitFile.MOST_PROBLEMS) {
                problems.add(new Problem(
                        where,
                        new FileSaid.TooLargeANumber(Double.isInfinite(size) ? null : VisitFileSchema.shorten(node))));
            }
        }
    }
}
