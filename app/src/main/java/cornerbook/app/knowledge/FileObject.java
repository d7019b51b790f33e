package cornerbook.app.knowledge;

import cornerbook.app.text.PlainText;
import cornerbook.core.say.Refused;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import tools.jackson.databind.JsonNode;

/**
 * One object of a knowledge file. Whatever does not fit is refused with its place.
 *
 * @param where JSON pointer to it
 */
record FileObject(JsonNode node, String where) {
    /** All of these, and of the others none but these may be there. */
    void has(List<String> required, List<String> optional) {
        if (!node.isObject()) {
            throw misshapen(where);
        }
        for (var name : required) {
            if (!node.has(name)) {
                throw misshapen(at(name));
            }
        }
        for (var name : node.propertyNames()) {
            if (!required.contains(name) && !optional.contains(name)) {
                throw misshapen(at(PlainText.shown(name)));
            }
        }
    }

    boolean hasOptional(String name) {
        return node.has(name);
    }

    FileObject child(String name) {
        return new FileObject(node.required(name), at(name));
    }

    List<FileObject> children(String name) {
        var array = node.required(name);
        if (!array.isArray()) {
            throw misshapen(at(name));
        }
        var children = new ArrayList<FileObject>();
        for (var child : array) {
            children.add(new FileObject(child, at(name) + "/" + children.size()));
        }
        return children;
    }

    /** A whole number between these, both included. */
    int whole(String name, int least, int most) {
        return (int) whole(name, least, (long) most);
    }

    long whole(String name, long least, long most) {
        var value = node.required(name);
        if (!value.isIntegralNumber()
                || !value.canConvertToLong()
                || value.longValue() < least
                || value.longValue() > most) {
            throw impossible(name);
        }
        return value.longValue();
    }

    /** A number between these, both included. */
    double number(String name, double least, double most) {
        return number(node.required(name), at(name), least, most);
    }

    private static double number(JsonNode value, String place, double least, double most) {
        if (!value.isNumber() || !(value.doubleValue() >= least && value.doubleValue() <= most)) {
            throw new Refused(new KnowledgeSaid.Impossible(place, PlainText.shown(value.toString())));
        }
        return value.doubleValue();
    }

    /** A number above 0, up to this. */
    double above(String name, double most) {
        return number(name, Double.MIN_NORMAL, most);
    }

    /** So many numbers within this of 0. */
    List<Double> numbers(String name, int size, double most) {
        var array = node.required(name);
        if (!array.isArray() || array.size() != size) {
            throw misshapen(at(name));
        }
        var numbers = new ArrayList<Double>();
        for (var value : array) {
            numbers.add(number(value, at(name) + "/" + numbers.size(), -most, most));
        }
        return numbers;
    }

    String text(String name, int longest) {
        var value = node.required(name);
        if (!value.isString()
                || value.stringValue().isBlank()
                || value.stringValue().length() > longest
                || PlainText.findUnfit(value.stringValue()).isPresent()) {
            throw impossible(name);
        }
        return value.stringValue();
    }

    <E extends Enum<E>> E constant(String name, Class<E> type) {
        var value = node.required(name);
        return Arrays.stream(type.getEnumConstants())
                .filter(each -> value.isString() && each.name().equals(value.stringValue()))
                .findFirst()
                .orElseThrow(() -> impossible(name));
    }

    LocalDate day(String name) {
        try {
            return LocalDate.parse(text(name, "2026-11-30".length()));
        } catch (DateTimeException e) {
            throw impossible(name);
        }
    }

    private String at(String name) {
        return where + "/" + name;
    }

    private Refused impossible(String name) {
        return new Refused(new KnowledgeSaid.Impossible(
                at(name), PlainText.shown(node.required(name).toString())));
    }

    private static Refused misshapen(String place) {
        return new Refused(new KnowledgeSaid.Misshapen(place));
    }
}
