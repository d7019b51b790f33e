package cornerbook.app.desk.link;

import cornerbook.app.exchange.CarForm;
import cornerbook.core.car.DataGap;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** Addresses of a car, its data and its wheels. */
public final class CarLinks {
    private CarLinks() {}

    public static String car(String vehicleId) {
        return "/cars/" + Address.segment(vehicleId);
    }

    /** For a customer whom the book knows. */
    public static String newCar(String customerId) {
        return newCar() + "?customer=" + Address.segment(customerId);
    }

    public static String newCar() {
        return "/cars/new";
    }

    /** Many new cars at once. */
    public static String carList() {
        return "/shop/cars";
    }

    public static String carData(String vehicleId) {
        return car(vehicleId) + "/data";
    }

    /** Where what nobody has looked up of a car is given: its field in the form of the car's data. */
    public static String give(String vehicleId, DataGap gap) {
        return carData(vehicleId) + "#" + CarForm.pointer(gap);
    }

    public static String wheel(String tag) {
        return "/wheels/" + Address.segment(tag);
    }

    public static String newVisit(String vehicleId) {
        return car(vehicleId) + "/visits/new";
    }

    /** The same with the wheels of a set filled in. */
    public static String newVisitOn(String vehicleId, String setId) {
        return newVisit(vehicleId) + "?set=" + Address.segment(setId);
    }

    /** A page of the cars that were searched for. */
    public static String cars(String query, int from) {
        return "/?q=" + URLEncoder.encode(query, StandardCharsets.UTF_8) + "&from=" + from + "#cars";
    }
}
