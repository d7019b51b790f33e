package cornerbook.core.days.plan;

import cornerbook.core.days.Skill;
import cornerbook.core.days.WorkHours;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A person's day at a hoist, which is theirs from the first minute of their hours to the last, breaks included: a car that is up stays
 * up.
 *
 * @param hoist by its mark; null where the shop keeps none in its tools
 * @param skills what the person has learned
 * @param begun whether its day has begun, so that the hours are what is left of it
 */
public record Station(
        LocalDate day, String person, @Nullable String hoist, WorkHours hours, Set<Skill> skills, boolean begun) {
    public Station {
        skills = Set.copyOf(skills);
    }

    /**
     * Who works at which hoist on a day. Where there are more people than hoists, those who begin first have one, of these those who
     * have learned most, then those who stay longest; the others help.
     *
     * @param hours of each who works that day
     * @param hoists by their marks; empty where the shop keeps none, so that everybody has room
     */
    public static List<Station> of(
            LocalDate day, Map<String, WorkHours> hours, List<String> hoists, Map<String, Set<Skill>> skills) {
        var people = hours.entrySet().stream()
                .filter(each -> !each.getValue().spans().isEmpty())
                .sorted(Comparator.comparingInt((Map.Entry<String, WorkHours> each) ->
                                each.getValue().begins())
                        .thenComparingInt(each ->
                                -skills.getOrDefault(each.getKey(), Set.of()).size())
                        .thenComparingInt(each -> -each.getValue().minutes())
                        .thenComparing(Map.Entry::getKey))
                .toList();
        var stations = new ArrayList<Station>();
        var freeFrom = new HashMap<String, Integer>();
        for (var person : people) {
            var works = person.getValue();
            var hoist = hoists.stream()
                    .filter(each -> freeFrom.getOrDefault(each, 0) <= works.begins())
                    .findFirst()
                    .orElse(null);
            if (hoist == null && !hoists.isEmpty()) {
                continue;
            }
            if (hoist != null) {
                freeFrom.put(hoist, works.ends());
            }
            stations.add(new Station(
                    day, person.getKey(), hoist, works, skills.getOrDefault(person.getKey(), Set.of()), false));
        }
        return List.copyOf(stations);
    }
}
