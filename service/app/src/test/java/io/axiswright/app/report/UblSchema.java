package io.axiswright.app.report;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;
import javax.xml.XMLConstants;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import org.w3c.dom.bootstrap.DOMImplementationRegistry;
import org.w3c.dom.ls.DOMImplementationLS;
import org.w3c.dom.ls.LSInput;
import org.xml.sax.SAXException;

/**
 * The schema of the quotation as OASIS published it (UBL 2.3, xsd/maindoc/UBL-Quotation-2.3.xsd), from the class path. For the
 * signatures of other bodies, which it imports without saying from where and our quotation has none of, anything stands in.
 */
final class UblSchema {

    private static final String FOLDER = "/external/schemas/ubl23/";

    private static final String CORE_COMPONENTS =
            "urn:un:unece:uncefact:data:specification:CoreComponentTypeSchemaModule:2";
    private static final String ANYTHING = """
            <xsd:schema xmlns:xsd="http://www.w3.org/2001/XMLSchema" targetNamespace="%s">
                <xsd:element name="Signature"/>
            </xsd:schema>
            """;

    private final Schema schema;

    UblSchema() throws Exception {
        var load = (DOMImplementationLS) DOMImplementationRegistry.newInstance().getDOMImplementation("LS 3.0");
        var factory = SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI);
        factory.setResourceResolver((_, namespace, _, systemId, _) -> {
            LSInput input = load.createLSInput();
            if (CORE_COMPONENTS.equals(namespace)) {
                input.setSystemId(namespace);
                input.setByteStream(open("/schemas/CCTS_CCT_SchemaModule.xsd"));
            } else if (systemId == null) {
                input.setSystemId(namespace);
                input.setStringData(ANYTHING.formatted(namespace));
            } else {
                input.setSystemId(systemId);
                input.setByteStream(open(FOLDER + "common/" + systemId.substring(systemId.lastIndexOf('/') + 1)));
            }
            return input;
        });
        schema = factory.newSchema(new StreamSource(open(FOLDER + "maindoc/UBL-Quotation-2.3.xsd")));
    }

    private static InputStream open(String file) {
        return Objects.requireNonNull(UblSchema.class.getResourceAsStream(file), file);
    }

    void validate(byte[] document) throws SAXException, IOException {
        schema.newValidator().validate(new StreamSource(new ByteArrayInputStream(document)));
    }
}
