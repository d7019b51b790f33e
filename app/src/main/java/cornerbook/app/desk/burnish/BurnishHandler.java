package cornerbook.app.desk.burnish;

import cornerbook.app.desk.Desk;
import cornerbook.app.desk.EntryUnits;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.OpenVisit;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Typed;
import cornerbook.app.desk.burnish.BurnishPage.Field;
import cornerbook.app.request.Told;
import cornerbook.core.brake.burnish.BurnishDrive;
import cornerbook.core.brake.burnish.judge.BurnishPlanning;
import cornerbook.core.corner.Axle;
import cornerbook.core.say.Refused;
import cornerbook.words.UnitSystem;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The plan of the burnish drive after a visit. What the car's data lack is asked for on the page, and kept nowhere. */
public final class BurnishHandler {
    private static final String PERCENT = "%";
    private static final double AIR_C = 10;

    private final Desk desk;
    private final Pages pages;

    public BurnishHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    public void show(ServerRequest request, ServerResponse response) {
        var visitId = Pages.pathValue(request, "id");
        var open = desk.getOpenVisit(visitId);
        pages.sendJudged(response, open.unjudged(), () -> view(open, new Asked(Form.ofQuery(request))));
    }

    private static Pages.View view(OpenVisit open, Asked asked) {
        var vehicle = open.history().vehicle();
        var w = Told.labels("app/desk/burnish");
        var known = BurnishPlanning.of(vehicle, AIR_C);
        var share = asked.value("frontShare", w.of("front-share"), PERCENT, percent(known.frontShare()));
        var massKg = asked.value("mass", w.of("mass"), "kg", known.massKg());
        // A drum has no field.
        boolean front = known.axles().contains(Axle.FRONT);
        boolean rear = known.axles().contains(Axle.REAR);
        var frontMassKg =
                !front ? null : asked.value("frontDiscMass", w.of("front-disc-mass"), "kg", known.frontDiscMassKg());
        var frontMm = !front
                ? null
                : asked.value("frontDiscDiameter", w.of("front-disc-diameter"), "mm", known.frontDiscDiameterMm());
        var rearMassKg =
                !rear ? null : asked.value("rearDiscMass", w.of("rear-disc-mass"), "kg", known.rearDiscMassKg());
        var rearMm = !rear
                ? null
                : asked.value("rearDiscDiameter", w.of("rear-disc-diameter"), "mm", known.rearDiscDiameterMm());
        var airC = asked.value("air", w.of("air"), "°C", AIR_C);
        List<String> missing = List.of();
        List<BurnishDrive> drives = List.of();
        BurnishDrive regenerating = null;
        var problem = "";
        try {
            var planning = new BurnishPlanning(
                    vehicle,
                    massKg,
                    share == null ? null : share / 100,
                    frontMassKg,
                    frontMm,
                    rearMassKg,
                    rearMm,
                    airC == null ? AIR_C : airC);
            missing =
                    planning.missing(planning.axles()).stream().map(Told::begin).toList();
            if (asked.isSound() && missing.isEmpty()) {
                drives = planning.axles().stream()
                        .map(axle -> planning.drive(axle, 0))
                        .toList();
                double usual = planning.usualRegenerationShare();
                regenerating = usual > 0 ? planning.drive(Axle.FRONT, usual) : null;
            }
        } catch (IllegalArgumentException e) {
            drives = List.of();
            problem = Typed.sentence(Told.say(Refused.said(e)));
        }
        return new Pages.View(
                asked.isSound() && problem.isEmpty() ? 200 : 422,
                "desk/burnish/burnish",
                new BurnishPage(
                        open.history(),
                        open.visit(),
                        asked.fields(),
                        asked.units(),
                        missing,
                        problem,
                        drives,
                        regenerating));
    }

    private static @Nullable Double percent(@Nullable Double share) {
        return share == null ? null : (Double) (share * 100);
    }

    /** Reads the fields one by one and keeps them for the page. */
    private static final class Asked {
        private final Form form;
        private final UnitSystem system;
        private final List<Field> fields = new ArrayList<>();

        Asked(Form form) {
            this.form = form;
            this.system = EntryUnits.of(form).system();
        }

        /** What was typed, else what is known; null when neither. */
        @Nullable
        Double value(String key, String label, String unit, @Nullable Double known) {
            var typed = form.has(key) ? form.get(key) : known == null ? "" : system.field(known, unit);
            Double value = null;
            var error = "";
            if (!typed.isEmpty()) {
                try {
                    value = Typed.valueOf(typed, unit, system);
                } catch (IllegalArgumentException e) {
                    error = Typed.sentence(Told.say(Refused.said(e)));
                }
            }
            fields.add(new Field(key, label, Told.reader().unitName(system.unitOf(unit)), typed, error));
            return value;
        }

        boolean isSound() {
            return fields.stream().allMatch(field -> field.error().isEmpty());
        }

        String units() {
            return system.word();
        }

        List<Field> fields() {
            return List.copyOf(fields);
        }
    }
}
