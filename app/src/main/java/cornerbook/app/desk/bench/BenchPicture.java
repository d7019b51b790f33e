package cornerbook.app.desk.bench;

import cornerbook.app.picture.air.ColdDaysOverYear;
import cornerbook.app.picture.air.LoadOverPressure;
import cornerbook.app.picture.air.PressureOverDays;
import cornerbook.app.picture.air.PressureOverSeason;
import cornerbook.app.picture.air.PressureOverTemperature;
import cornerbook.app.picture.air.SensorScales;
import cornerbook.app.picture.air.ShareOfRating;
import cornerbook.app.picture.battery.ChargeByVoltage;
import cornerbook.app.picture.battery.ChargeOverDays;
import cornerbook.app.picture.battery.LoadTestByTemperature;
import cornerbook.app.picture.brake.CostOverInterval;
import cornerbook.app.picture.brake.TemperatureOverTime;
import cornerbook.app.picture.brake.WarmerThanPartner;
import cornerbook.app.picture.lift.LiftFromAbove;
import cornerbook.app.picture.lift.LiftFromSide;
import cornerbook.app.picture.torque.ClampLoadBar;
import cornerbook.app.picture.torque.TighteningSequence;
import cornerbook.app.picture.torque.TorqueScales;
import cornerbook.app.picture.torque.WrenchFromAbove;
import cornerbook.app.picture.tyre.AgeOfTyre;
import cornerbook.app.picture.tyre.CircumferenceSpread;
import cornerbook.app.picture.tyre.GroovesOfAxle;
import cornerbook.app.picture.tyre.PaidOverDistance;
import cornerbook.app.picture.tyre.TwoTyres;
import cornerbook.app.picture.tyre.TyreBySize;
import cornerbook.app.picture.tyre.WaysSideBySide;
import cornerbook.app.picture.tyre.WheelSection;
import cornerbook.core.air.LeakRate;
import cornerbook.core.air.LoadPressure;
import cornerbook.core.air.PressureSetting;
import cornerbook.core.air.SeasonPressures;
import cornerbook.core.air.SensorAge;
import cornerbook.core.air.SensorCheck;
import cornerbook.core.battery.BatteryHealth;
import cornerbook.core.battery.LoadTest;
import cornerbook.core.battery.ParkedDays;
import cornerbook.core.battery.RestVoltage;
import cornerbook.core.brake.burnish.BurnishDrive;
import cornerbook.core.brake.drag.AxleDrag;
import cornerbook.core.brake.interval.BestInterval;
import cornerbook.core.changeover.ChangeOverDays;
import cornerbook.core.cost.TyreCosts;
import cornerbook.core.cost.renew.RenewCosts;
import cornerbook.core.lift.ArmLoads;
import cornerbook.core.lift.LiftStack;
import cornerbook.core.torque.ClampLoad;
import cornerbook.core.torque.ScaleSetting;
import cornerbook.core.torque.ShortForm;
import cornerbook.core.torque.TighteningOrder;
import cornerbook.core.torque.TorqueBar;
import cornerbook.core.torque.WrenchCalibration;
import cornerbook.core.torque.WrenchSetting;
import cornerbook.core.tread.AxleAlignment;
import cornerbook.core.tyre.CircumferenceDifference;
import cornerbook.core.tyre.SetFit;
import cornerbook.core.tyre.SizeComparison;
import cornerbook.core.tyre.SizeMeaning;
import cornerbook.core.tyre.TyreAge;
import cornerbook.core.why.Explained;
import cornerbook.words.Reader;
import java.util.List;

/** The pictures of a calculator's result. */
public final class BenchPicture {
    private BenchPicture() {}

    /** In the order to be shown; none for a result that has none. */
    public static List<String> of(Explained result, Reader reader) {
        return switch (result) {
            case TighteningOrder order -> List.of(TighteningSequence.svg(order, reader));
            case WrenchSetting setting -> List.of(WrenchFromAbove.svg(setting, reader));
            case ClampLoad load ->
                List.of(ClampLoadBar.svg(
                        reader.labels("app/picture/torque").of("by-friction"),
                        load.leastShareOfProof(),
                        load.mostShareOfProof(),
                        load.strength().proofLoadN(load.thread()),
                        reader));
            case ShortForm load ->
                List.of(ClampLoadBar.svg(
                        reader.labels("app/picture/torque").of("short-form", "state", load.state()),
                        load.leastN() / load.strength().proofLoadN(load.thread()),
                        load.mostShareOfProof(),
                        load.strength().proofLoadN(load.thread()),
                        reader));
            case SeasonPressures season -> List.of(PressureOverSeason.svg(season, reader));
            case ArmLoads loads -> LiftFromAbove.find(loads, reader).stream().toList();
            case LiftStack stack -> List.of(LiftFromSide.svg(stack, reader));
            case SizeComparison comparison -> List.of(TwoTyres.svg(comparison, reader));
            case SizeMeaning meaning ->
                TyreBySize.find(meaning, reader).stream().toList();
            case TyreAge age -> List.of(AgeOfTyre.svg(age, reader));
            case RestVoltage rest -> List.of(ChargeByVoltage.svg(rest, reader));
            case BatteryHealth health -> List.of(ShareOfRating.svg(health, reader));
            case BurnishDrive drive -> List.of(TemperatureOverTime.svg(drive, reader));
            case AxleDrag drag -> List.of(WarmerThanPartner.svg(drag, reader));
            case LoadPressure load -> List.of(LoadOverPressure.svg(load, reader));
            case LeakRate leak -> List.of(PressureOverDays.svg(leak, reader));
            case SetFit fit -> List.of(WheelSection.svg(fit, reader));
            case CircumferenceDifference difference -> List.of(CircumferenceSpread.svg(difference, reader));
            case AxleAlignment alignment -> List.of(GroovesOfAxle.svg(alignment, reader));
            case ScaleSetting setting -> List.of(TorqueScales.of(setting, reader));
            case TorqueBar bar -> List.of(TorqueScales.of(bar, reader));
            case WrenchCalibration calibration -> List.of(TorqueScales.of(calibration, reader));
            case PressureSetting setting -> List.of(PressureOverTemperature.svg(setting, reader));
            case ParkedDays parked -> List.of(ChargeOverDays.svg(parked, reader));
            case LoadTest test -> List.of(LoadTestByTemperature.svg(test, reader));
            case SensorCheck check -> List.of(SensorScales.of(check, reader));
            case TyreCosts costs -> List.of(PaidOverDistance.svg(costs, reader));
            case RenewCosts costs -> List.of(WaysSideBySide.svg(costs, reader));
            case BestInterval interval -> List.of(CostOverInterval.svg(interval, reader));
            case ChangeOverDays days -> List.of(ColdDaysOverYear.svg(days, reader));
            case SensorAge age -> List.of(SensorScales.of(age, reader));
            default -> List.of();
        };
    }
}
