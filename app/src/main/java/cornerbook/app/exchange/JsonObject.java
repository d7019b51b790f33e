package cornerbook.app.exchange;

import cornerbook.app.text.PlainText;
import cornerbook.core.car.Measure;
import cornerbook.core.car.WrittenReading;
import cornerbook.core.quantity.Quantities;
import cornerbook.core.say.Refused;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/**
 * One object of a visit file that the schema has passed, with its place in the file.
 *
 * @param parent in which it is; null for the whole file
 * @param name of the member of its parent that it is, or that is the array in which it is
 * @param place in that array; {@link #ALONE} for a member itself
 */
record JsonObject(JsonNode node, @Nullable JsonObject parent, String name, int place) {
    private static final int ALONE = -1;

    /** The whole file. */
    JsonObject(JsonNode root) {
        this(root, null, "", ALONE);
    }

    JsonObject child(String name) {
        return new JsonObject(node.required(name), this, name, ALONE);
    }

    List<JsonObject> children(String name) {
        var children = new ArrayList<JsonObject>();
        for (var child : node.required(name)) {
            children.add(new JsonObject(child, this, name, children.size()));
        }
        return children;
    }

    /** JSON pointer to it, which is asked for when something is wrong with one of some thousand. */
    String where() {
        if (parent == null) {
            return "";
        }
        var member = parent.where() + "/" + name;
        return place == ALONE ? member : member + "/" + place;
    }

    /** Those of an array that may be left out. */
    List<JsonObject> optionalChildren(String name) {
        return has(name) ? children(name) : List.of();
    }

    boolean has(String name) {
        return node.has(name);
    }

    String text(String name) {
        var text = node.required(name).stringValue();
        refuseUnprintable(text, name);
        return text;
    }

    @Nullable
    String optionalText(String name) {
        return has(name) ? text(name) : null;
    }

    private String ownText() {
        var text = node.stringValue();
        refuseUnprintable(text, null);
        return text;
    }

    /** The texts of an array. */
    List<String> texts(String name) {
        return children(name).stream().map(JsonObject::ownText).toList();
    }

    boolean flag(String name) {
        return node.required(name).booleanValue();
    }

    int whole(String name) {
        return (int) number(name);
    }

    double number(String name) {
        return number(node.required(name));
    }

    /** A minus before zero means nothing, and no two stores keep it alike. */
    private static double number(JsonNode node) {
        double value = node.doubleValue();
        return value == 0 ? 0 : value;
    }

    <E extends Enum<E>> E constant(String name, Class<E> type) {
        return Spelling.find(type, node.required(name).stringValue())
                .orElseGet(() -> Spelling.constant(type, text(name)));
    }

    LocalDate date(String name) {
        try {
            return LocalDate.parse(text(name));
        } catch (DateTimeException e) {
            throw new ProblemException(where() + "/" + name, new FileSaid.NoDay(PlainText.shown(text(name))));
        }
    }

    @Nullable
    LocalDate optionalDate(String name) {
        return has(name) ? date(name) : null;
    }

    /** What the person wrote; a bare number gets the unit that it is in. */
    String written(String name, String bookUnit) {
        if (node.required(name).isString()) {
            return text(name);
        }
        return bookUnit.equals("1")
                ? BigDecimal.valueOf(number(name)).stripTrailingZeros().toPlainString()
                : Quantities.write(number(name), bookUnit);
    }

    /** The value in the book's unit. */
    double quantity(String name, String bookUnit) {
        return value(name, bookUnit, written -> Quantities.parse(written, bookUnit));
    }

    @Nullable
    Double optionalQuantity(String name, String bookUnit) {
        return has(name) ? (Double) quantity(name, bookUnit) : null;
    }

    /** The quantities of an array; none when it is left out. */
    List<Double> quantities(String name, String bookUnit) {
        return has(name)
                ? children(name).stream()
                        .map(child -> child.ownQuantity(bookUnit))
                        .toList()
                : List.of();
    }

    private double ownQuantity(String bookUnit) {
        if (node.isNumber()) {
            return number(node);
        }
        try {
            return Quantities.parse(ownText(), bookUnit);
        } catch (IllegalArgumentException e) {
            throw new ProblemException(where(), Refused.said(e));
        }
    }

    @Nullable
    Double optionalNumber(String name) {
        return has(name) ? (Double) number(name) : null;
    }

    @Nullable
    Integer optionalWhole(String name) {
        return has(name) ? (Integer) whole(name) : null;
    }

    @Nullable
    Boolean optionalFlag(String name) {
        return has(name) ? (Boolean) flag(name) : null;
    }

    <E extends Enum<E>> @Nullable E optionalConstant(String name, Class<E> type) {
        return has(name) ? constant(name, type) : null;
    }

    /** What a member says; {@code otherwise} when it is not there. */
    <T> T optionalChild(String name, Function<JsonObject, T> read, T otherwise) {
        if (!has(name)) {
            return otherwise;
        }
        var child = child(name);
        return child.build(() -> read.apply(child));
    }

    /** The value of a reading in its measure's unit. */
    double quantity(String name, Measure measure) {
        return value(name, measure.unit(), written -> WrittenReading.valueOf(measure, written));
    }

    private double value(String name, String bookUnit, ToDoubleFunction<String> parse) {
        if (node.required(name).isNumber() && !bookUnit.equals("1")) {
            return number(name);
        }
        try {
            return parse.applyAsDouble(written(name, bookUnit));
        } catch (IllegalArgumentException e) {
            throw new ProblemException(where() + "/" + name, Refused.said(e));
        }
    }

    /** Of a member, or of this text itself. */
    private void refuseUnprintable(String text, @Nullable String name) {
        PlainText.findUnfitInLines(text).ifPresent(unfit -> {
            throw new ProblemException(name == null ? where() : where() + "/" + name, new FileSaid.NotPrintable(unfit));
        });
    }

    /** Builds a record of this object; what its constructor refuses becomes a problem of this object. */
    <T> T build(Supplier<T> constructor) {
        try {
            return constructor.get();
        } catch (IllegalArgumentException e) {
            throw new ProblemException(where(), Refused.said(e));
        }
    }
}
