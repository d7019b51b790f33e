package cornerbook.core.wheelplan.search;

import java.util.ArrayList;
import java.util.List;

/** One way to spread the whole seasons of a wheel over the corner classes, and what it wears in each groove. */
final class Mixture {
    final long counts;
    /** Bit c is set when the wheel runs in class c at any time. */
    final int classesUsed;

    final double[] wearMm;
    /** What its distances cost by the classes of a weighing, thousand km. */
    final double weighed;

    private Mixture(long counts, int classesUsed, double[] wearMm, double weighed) {
        this.counts = counts;
        this.classesUsed = classesUsed;
        this.wearMm = wearMm;
        this.weighed = weighed;
    }

    /** Every mixture of the layout's whole seasons. */
    static List<Mixture> all(SetNumbers numbers, CountLayout layout, Weighing weighing) {
        var found = new ArrayList<Mixture>();
        var none = new Mixture(0, 0, new double[numbers.grooves], 0);
        int seasons = layout.groups() == 0 ? 0 : layout.seasons(layout.wholeSeasons(), 0);
        collect(none, 0, 0, seasons, numbers, layout, weighing, found);
        return found;
    }

    private static void collect(
            Mixture so,
            int group,
            int cornerClass,
            int left,
            SetNumbers numbers,
            CountLayout layout,
            Weighing weighing,
            List<Mixture> into) {
        if (group == layout.groups()) {
            into.add(so);
            return;
        }
        boolean lastClass = cornerClass == numbers.classes - 1;
        for (int n = lastClass ? left : 0; n <= left; n++) {
            var wear = so.wearMm.clone();
            for (int g = 0; g < wear.length; g++) {
                wear[g] += layout.distance(group) * n * numbers.classRate[cornerClass][g];
            }
            var more = new Mixture(
                    so.counts + n * layout.one(group, cornerClass),
                    n == 0 ? so.classesUsed : so.classesUsed | 1 << cornerClass,
                    wear,
                    so.weighed + layout.distance(group) * n * weighing.ofClass[cornerClass]);
            if (!lastClass) {
                collect(more, group, cornerClass + 1, left - n, numbers, layout, weighing, into);
            } else {
                int next = group + 1;
                int seasons = next == layout.groups() ? 0 : layout.seasons(layout.wholeSeasons(), next);
                collect(more, next, 0, seasons, numbers, layout, weighing, into);
            }
        }
    }
}
