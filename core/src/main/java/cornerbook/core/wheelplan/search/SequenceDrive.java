package cornerbook.core.wheelplan.search;

import cornerbook.core.corner.Corner;
import cornerbook.core.wheelplan.RotationPattern;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Drives a fixed sequence of assignments season by season; the last assignment goes on when the sequence is shorter. */
final class SequenceDrive {
    private final SetNumbers numbers;
    private final double[][] depthMm;
    private final List<Integer> driven = new ArrayList<>();
    private double thousandKm;
    private boolean keepsRules = true;

    private SequenceDrive(SetNumbers numbers) {
        this.numbers = numbers;
        depthMm = Arrays.stream(numbers.slackMm).map(double[]::clone).toArray(double[][]::new);
    }

    static SequenceDrive of(SetNumbers numbers, List<Integer> assignments) {
        var drive = new SequenceDrive(numbers);
        for (int s = 0;
                s < numbers.seasons && !drive.season(s, assignments.get(Math.min(s, assignments.size() - 1))); ) {
            s++;
        }
        return drive;
    }

    /** A pattern done at each change-over, from where the wheels ran last. */
    static List<Integer> repeated(SetNumbers numbers, RotationPattern pattern) {
        var assignments = new ArrayList<Integer>();
        int before = numbers.unmoved;
        for (int s = 0; s < numbers.seasons; s++) {
            before = after(before, pattern);
            assignments.add(before);
        }
        return assignments;
    }

    double thousandKm() {
        return thousandKm;
    }

    boolean keepsRules() {
        return keepsRules;
    }

    /** The assignments of the seasons that were entered. */
    List<Integer> driven() {
        return driven;
    }

    /** Depth between the deepest and the shallowest wheel where the drive ended, mm. */
    double spreadMm() {
        return SetNumbers.spread(least());
    }

    int moves() {
        int moves = numbers.firstMoves[driven.getFirst()];
        for (int s = 1; s < driven.size(); s++) {
            moves += Assignments.moves(driven.get(s - 1), driven.get(s));
        }
        return moves;
    }

    private boolean season(int season, int assignment) {
        driven.add(assignment);
        keepsRules &= Arrays.stream(numbers.allowed).anyMatch(allowed -> allowed == assignment)
                && numbers.mayFit(assignment, least());
        double reach = Double.POSITIVE_INFINITY;
        for (int i = 0; i < numbers.wheels; i++) {
            for (int g = 0; g < numbers.grooves; g++) {
                double rate = numbers.rate[Assignments.corner(assignment, i)][g];
                reach = Math.min(reach, SetNumbers.reach(Math.max(0, depthMm[i][g]), rate));
            }
        }
        boolean last = season == numbers.seasons - 1;
        boolean ends = last || reach < numbers.season[season];
        double within = Math.min(reach, numbers.season[season]);
        wear(assignment, within);
        keepsRules &= numbers.withinDifferences(assignment, least());
        wear(assignment, ends ? reach - within : 0);
        thousandKm += ends ? reach : within;
        return ends;
    }

    private void wear(int assignment, double distance) {
        for (int i = 0; i < numbers.wheels; i++) {
            for (int g = 0; g < numbers.grooves; g++) {
                depthMm[i][g] -= distance * numbers.rate[Assignments.corner(assignment, i)][g];
            }
        }
    }

    private double[] least() {
        return Arrays.stream(depthMm)
                .mapToDouble(depths -> Arrays.stream(depths).min().orElseThrow())
                .toArray();
    }

    private static int after(int assignment, RotationPattern pattern) {
        for (int next = 0; next < Assignments.count(Assignments.CORNERS); next++) {
            boolean matches = true;
            for (int i = 0; i < Assignments.CORNERS && matches; i++) {
                var from = Corner.values()[Assignments.corner(assignment, i)];
                matches = pattern.from(from).ordinal() == Assignments.corner(next, i);
            }
            if (matches) {
                return next;
            }
        }
        throw new IllegalArgumentException("the pattern " + pattern + " sends two wheels to one corner");
    }
}
