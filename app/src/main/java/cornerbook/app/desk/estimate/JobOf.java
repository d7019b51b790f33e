package cornerbook.app.desk.estimate;

import cornerbook.core.assess.Advice;
import cornerbook.core.brake.judge.BrakeSaid;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.price.Job;
import cornerbook.core.release.ChargedWork;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The job of the price list that an advice asks for. Advice that leaves open what is to be done, as to find out why, has none: its line
 * has no price until somebody gives it one.
 *
 * @param times how often it is done: once for the car, each axle or each wheel
 * @param works the same as the bay sheet knows it
 */
record JobOf(Job job, int times, List<ChargedWork> works) {
    JobOf {
        works = List.copyOf(works);
    }

    static Optional<JobOf> find(Advice advice) {
        return advice.todo()
                .flatMap(todo -> find(part(advice), todo.action()))
                .map(job -> new JobOf(job, times(job, corners(advice)), ChargedWork.of(job, corners(advice))));
    }

    /** Whether both are one work: of a job that is done once for the car whatever asks for it, else of the same parts on the bay sheet. */
    boolean isSame(JobOf other) {
        return job == other.job && (job.per() == Job.Per.CAR || (!works.isEmpty() && works.equals(other.works)));
    }

    /** What of the two brakes of an axle is replaced together, where it is about both. */
    private static Subject.Part part(Advice advice) {
        return advice.first().title() instanceof BrakeSaid.ReplacePair pair
                ? pair.pair().part()
                : advice.first().subject().part();
    }

    private static Optional<Job> find(Subject.Part part, Todo.Action action) {
        return switch (action) {
            case REPLACE, REPLACE_PAIR -> replaced(part);
            case SERVICE_BRAKE -> Optional.of(Job.BRAKE_SERVICE);
            case FIND_LEAK -> Optional.of(Job.TYRE_REPAIR);
            case CHARGE_AND_TEST -> Optional.of(Job.BATTERY_TEST);
            case MEASURE_ALIGNMENT -> Optional.of(Job.ALIGNMENT);
            default -> Optional.empty();
        };
    }

    private static Optional<Job> replaced(Subject.Part part) {
        return switch (part) {
            case PAD -> Optional.of(Job.PADS);
            case DISC -> Optional.of(Job.DISCS);
            case SHOE -> Optional.of(Job.SHOES);
            case DRUM -> Optional.of(Job.DRUMS);
            case CALIPER -> Optional.of(Job.CALIPER);
            case BRAKE_LINE -> Optional.of(Job.BRAKE_HOSE);
            case BRAKE_FLUID -> Optional.of(Job.BRAKE_FLUID);
            case BATTERY -> Optional.of(Job.BATTERY);
            case PRESSURE_SENSOR -> Optional.of(Job.PRESSURE_SENSOR);
            default -> Optional.empty();
        };
    }

    private static List<Corner> corners(Advice advice) {
        return advice.findings().stream().flatMap(JobOf::corners).distinct().toList();
    }

    private static Stream<Corner> corners(Finding finding) {
        return finding.title() instanceof BrakeSaid.ReplacePair asked
                ? Arrays.stream(Corner.values()).filter(corner -> corner.axle() == asked.axle())
                : Stream.ofNullable(finding.subject().corner());
    }

    /** What is about no corner is about all of them. */
    private static int times(Job job, List<Corner> corners) {
        var all = corners.isEmpty() ? List.of(Corner.values()) : corners;
        return switch (job.per()) {
            case CAR -> 1;
            case AXLE -> (int) all.stream().map(Corner::axle).distinct().count();
            case CORNER, TYRE -> all.size();
        };
    }
}
