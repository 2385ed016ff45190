package stafette.musicxml.write;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.xml.XMLConstants;
import javax.xml.parsers.SAXParserFactory;
import javax.xml.transform.Source;
import javax.xml.transform.sax.SAXSource;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import javax.xml.validation.Validator;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.XMLReader;

/**
 * The MusicXML 4.0 schema of the W3C Music Notation Community Group. ProxyMusic's jar holds it with
 * marked changes, which are taken back here.
 */
public final class OfficialSchema {
  private static final Schema MUSICXML = load();

  private OfficialSchema() {}

  /** What the schema finds wrong, without places. */
  public static List<String> errors(byte[] bytes) throws SAXException, IOException {
    List<String> errors = new ArrayList<>();
    Validator validator = MUSICXML.newValidator();
    validator.setErrorHandler(
        new ErrorHandler() {
          @Override
          public void warning(SAXParseException e) {
            errors.add(String.valueOf(e.getMessage()));
          }

          @Override
          public void error(SAXParseException e) {
            errors.add(String.valueOf(e.getMessage()));
          }

          @Override
          public void fatalError(SAXParseException e) throws SAXException {
            throw e;
          }
        });
    validator.validate(withoutDtd(bytes));
    return errors;
  }

  private static Source withoutDtd(byte[] bytes) throws SAXException {
    try {
      SAXParserFactory factory = SAXParserFactory.newDefaultInstance();
      factory.setNamespaceAware(true);
      factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
      XMLReader reader = factory.newSAXParser().getXMLReader();
      return new SAXSource(reader, new InputSource(new ByteArrayInputStream(bytes)));
    } catch (javax.xml.parsers.ParserConfigurationException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Schema load() {
    try {
      String official =
          resource("/META-INF/jaxb/xsd/musicxml.xsd")
              .replaceAll("(?s)<!-- ?HB-new -->.*?<!-- ?HB-end -->", "")
              .replaceAll("(?s)<!-- ?HB-old(.*?)-->", "$1");
      SchemaFactory factory = SchemaFactory.newDefaultInstance();
      factory.setProperty(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "");
      return factory.newSchema(
          new Source[] {
            source(resource("/xsd/xml.xsd")),
            source(resource("/xsd/xlink.xsd")),
            source(official.replaceAll(" schemaLocation=\"[^\"]*\"", ""))
          });
    } catch (SAXException | IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Source source(String text) {
    return new StreamSource(new StringReader(text));
  }

  private static String resource(String name) throws IOException {
    try (InputStream in =
        Objects.requireNonNull(OfficialSchema.class.getResourceAsStream(name), name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
