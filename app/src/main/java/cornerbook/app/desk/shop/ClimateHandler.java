package cornerbook.app.desk.shop;

import cornerbook.app.desk.Desk;
import cornerbook.app.desk.EntryUnits;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Typed;
import cornerbook.app.desk.UnitChoice;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.core.season.Climate;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.time.Month;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/** The climate of the shop's place, entered month by month. */
public final class ClimateHandler {
    public static final String PAGE = "/shop/climate";
    private static final String UNIT = "°C";
    private final Desk desk;
    private final Pages pages;

    public ClimateHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    public void show(ServerRequest request, ServerResponse response) {
        var fields = desk.book().climate().find().map(ClimateHandler::fields).orElse(Map.of());
        pages.send(response, 200, "desk/shop/climate", new ClimatePage(new Form(fields), !fields.isEmpty(), ""));
    }

    public void save(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        try {
            desk.book().climate().put(climate(typed));
            desk.learning().readAnew();
            Pages.redirect(response, PAGE);
        } catch (IllegalArgumentException e) {
            var kept = desk.book().climate().find().isPresent();
            pages.send(response, 422, "desk/shop/climate", new ClimatePage(typed, kept, Typed.sentence(e)));
        }
    }

    public void remove(ServerRequest request, ServerResponse response) {
        desk.book().climate().remove();
        desk.learning().readAnew();
        Pages.redirect(response, PAGE);
    }

    /** What stands in the fields, in the units of this person. */
    private static Map<String, String> fields(Climate climate) {
        var fields = new LinkedHashMap<String, String>();
        fields.put("place", climate.place());
        fields.put("source", climate.source());
        fields.put("coldest", field(climate.coldestMorningC()));
        for (var month : Month.values()) {
            fields.put("minimum." + month.getValue(), field(climate.get(month).meanDailyMinimumC()));
            fields.put("maximum." + month.getValue(), field(climate.get(month).meanDailyMaximumC()));
        }
        return fields;
    }

    private static String field(double temperatureC) {
        return UnitChoice.current().field(temperatureC, UNIT);
    }

    private static Climate climate(Form typed) {
        return new Climate(
                typed.get("place"),
                typed.get("source"),
                value(typed, "coldest", new ShopSaid.ColdestMorning()),
                Arrays.stream(Month.values()).map(month -> month(typed, month)).toList());
    }

    private static Climate.MonthNormal month(Form typed, Month month) {
        var name = ClimatePage.nameOf(month);
        double minimumC = value(typed, "minimum." + month.getValue(), new ShopSaid.MeanDaily(false, name));
        double maximumC = value(typed, "maximum." + month.getValue(), new ShopSaid.MeanDaily(true, name));
        try {
            return new Climate.MonthNormal(minimumC, maximumC);
        } catch (IllegalArgumentException e) {
            throw new Refused(new ShopSaid.Of(Said.verbatim(name), Refused.said(e)));
        }
    }

    private static double value(Form typed, String field, Said what) {
        if (typed.get(field).isEmpty()) {
            throw new Refused(new ShopSaid.Missing(what));
        }
        try {
            return Typed.valueOf(typed.get(field), UNIT, EntryUnits.of(typed).system());
        } catch (IllegalArgumentException e) {
            throw new Refused(new ShopSaid.Of(what, Refused.said(e)));
        }
    }
}
