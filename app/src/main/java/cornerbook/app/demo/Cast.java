package cornerbook.app.demo;

import java.time.LocalDate;
import java.util.List;

/** The twelve cars of the invented shop. */
final class Cast {
    private Cast() {}

    static List<CastMember> members(LocalDate today) {
        var members = List.of(
                FrontDriveCars.volta(today),
                FrontDriveCars.tiko(today),
                RearAndAllWheelDriveCars.lumen(today),
                RearAndAllWheelDriveCars.ibex(today),
                RearAndAllWheelDriveCars.arc(today),
                FrontDriveCars.plover(today),
                RearAndAllWheelDriveCars.nine(today),
                FrontDriveCars.wren(today),
                RearAndAllWheelDriveCars.skua(today),
                FrontDriveCars.sedge(today),
                FrontDriveCars.harvest(today),
                RearAndAllWheelDriveCars.otter(today));
        return members.stream()
                .map(member -> CastDetails.lookedUp(member, today))
                .toList();
    }
}
