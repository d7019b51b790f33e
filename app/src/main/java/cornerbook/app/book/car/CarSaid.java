package cornerbook.app.book.car;

import cornerbook.core.say.Said;
import cornerbook.core.tool.ShopTool;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What people are told of the cars in the book. Cars, sets, wheels and tools are named by their ids and tags. */
public interface CarSaid extends Said {
    record NoCar(String car) implements CarSaid {}

    record NoVisit(String visit) implements CarSaid {}

    record ChangedMeanwhile() implements CarSaid {}

    record OtherWheels(String set, List<Said> wheels, List<Said> known) implements CarSaid {}

    record NoTool(ShopTool.Kind kind, String tool) implements CarSaid {}

    /**
     * A value of the car cannot stand.
     *
     * @param why null where nothing more can be said of it
     */
    record Unreadable(String car, @Nullable Said why) implements CarSaid {}

    record NoDay(String written) implements CarSaid {}

    record PartMissing(String car, Part part) implements CarSaid {}

    /** A part without which there is no car. */
    enum Part {
        FRONT_AXLE,
        REAR_AXLE,
        CUSTOMER
    }
}
