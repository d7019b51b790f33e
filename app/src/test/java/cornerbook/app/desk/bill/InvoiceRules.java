package cornerbook.app.desk.bill;

import java.io.ByteArrayInputStream;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.transform.Templates;
import javax.xml.transform.stream.StreamResult;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.SchemaFactory;
import net.sf.saxon.TransformerFactoryImpl;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * What a structured invoice violates, by what we did not make: the schema of UBL 2.1 of OASIS and the rules of EN 16931 as CEN/TC 434
 * publishes them for UBL (1.3.12), both as org.mustangproject:validator 2.20.0 brings them along. Its own classes are not used: they want
 * libraries that stand in the way of others.
 */
final class InvoiceRules {
    private static final String RULES = "/xslt/en16931schematron/EN16931-UBL-validation.xslt";
    private static final String SCHEMA = "/schema/UBL_21/maindoc/UBL-%s-2.1.xsd";
    private static final String REPORT = "http://purl.oclc.org/dsdl/svrl";

    private final Templates rules;

    InvoiceRules() throws Exception {
        rules = new TransformerFactoryImpl()
                .newTemplates(new StreamSource(Objects.requireNonNull(InvoiceRules.class.getResource(RULES))
                        .toString()));
    }

    /** The rules that a file violates, by their numbers; "schema" for that of UBL. */
    List<String> violatedBy(byte[] file) throws Exception {
        var violated = new ArrayList<String>();
        var builders = DocumentBuilderFactory.newDefaultNSInstance();
        var root = builders.newDocumentBuilder()
                .parse(new ByteArrayInputStream(file))
                .getDocumentElement()
                .getLocalName();
        var schemas = SchemaFactory.newDefaultInstance();
        schemas.setProperty(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "jar:file,file");
        try {
            schemas.newSchema(Objects.requireNonNull(InvoiceRules.class.getResource(SCHEMA.formatted(root))))
                    .newValidator()
                    .validate(new StreamSource(new ByteArrayInputStream(file)));
        } catch (SAXException e) {
            violated.add("schema: " + e.getMessage());
        }
        var report = new StringWriter();
        rules.newTransformer().transform(new StreamSource(new ByteArrayInputStream(file)), new StreamResult(report));
        var failed = builders.newDocumentBuilder()
                .parse(new InputSource(new StringReader(report.toString())))
                .getElementsByTagNameNS(REPORT, "failed-assert");
        for (int at = 0; at < failed.getLength(); at++) {
            violated.add(((Element) failed.item(at)).getAttribute("id"));
        }
        return violated;
    }
}
