package cornerbook.core.order.judge;

import cornerbook.core.finding.Case;
import cornerbook.core.finding.Finding;
import cornerbook.core.tread.judge.SetForecast;
import cornerbook.core.tread.judge.TreadForecaster;
import java.util.List;
import java.util.stream.Stream;

/** All that a car may need until its coming visit. */
public final class CarNeeds {
    private CarNeeds() {}

    /**
     * What a case may need; what it needs for certain not is left out.
     *
     * @param forecasts of the case
     * @param findings of the case
     */
    public static List<CarNeed> of(
            Case given, TreadForecaster forecaster, List<SetForecast> forecasts, List<Finding> findings) {
        return Stream.concat(
                        TyreNeeds.of(given, forecaster, forecasts, findings).stream(),
                        PartNeeds.of(given, findings).stream())
                .filter(need -> need.need().any() > 0)
                .toList();
    }
}
