package cornerbook.app.desk.bill;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Map;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.joda.money.Money;

/** Writes the elements of UBL 2.1: those that hold others, and those that hold a value. Source: OASIS, UBL 2.1, 4 November 2013. */
final class UblWriter {
    private static final String HOLDS_OTHERS =
            "urn:oasis:names:specification:ubl:schema:xsd:CommonAggregateComponents-2";
    private static final String HOLDS_A_VALUE = "urn:oasis:names:specification:ubl:schema:xsd:CommonBasicComponents-2";

    /** What XML 1.0 cannot hold, section 2.2. */
    private static final String NO_CHARACTERS = "[^\\t\\n\\r\\x20-\\uD7FF\\uE000-\\uFFFD\\x{10000}-\\x{10FFFF}]";

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final XMLStreamWriter xml;

    /** Begins a document, as Invoice. */
    UblWriter(String document) {
        try {
            xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(bytes, StandardCharsets.UTF_8.name());
        } catch (XMLStreamException e) {
            throw unwritable(e);
        }
        write(() -> {
            xml.writeStartDocument(StandardCharsets.UTF_8.name(), "1.0");
            xml.writeStartElement(document);
            xml.writeDefaultNamespace("urn:oasis:names:specification:ubl:schema:xsd:%s-2".formatted(document));
            xml.writeNamespace("cac", HOLDS_OTHERS);
            xml.writeNamespace("cbc", HOLDS_A_VALUE);
        });
    }

    /** An element with what is written within. */
    void within(String name, Runnable content) {
        write(() -> xml.writeStartElement("cac", name, HOLDS_OTHERS));
        content.run();
        write(xml::writeEndElement);
    }

    void value(String name, String text) {
        value(name, Map.of(), text);
    }

    void value(String name, LocalDate day) {
        value(name, day.toString());
    }

    void value(String name, Money amount) {
        value(
                name,
                Map.of("currencyID", amount.getCurrencyUnit().getCode()),
                amount.getAmount().toPlainString());
    }

    void value(String name, Map<String, String> attributes, String text) {
        write(() -> {
            xml.writeStartElement("cbc", name, HOLDS_A_VALUE);
            for (var attribute : attributes.entrySet()) {
                xml.writeAttribute(attribute.getKey(), attribute.getValue());
            }
            xml.writeCharacters(text.replaceAll(NO_CHARACTERS, ""));
            xml.writeEndElement();
        });
    }

    /** Ends the document. */
    byte[] bytes() {
        write(() -> {
            xml.writeEndDocument();
            xml.close();
        });
        return bytes.toByteArray();
    }

    private interface Written {
        void run() throws XMLStreamException;
    }

    private static void write(Written written) {
        try {
            written.run();
        } catch (XMLStreamException e) {
            throw unwritable(e);
        }
    }

    /** Memory takes every byte, and each element is begun and ended here. */
    private static IllegalStateException unwritable(XMLStreamException e) {
        return new IllegalStateException(e);
    }
}
