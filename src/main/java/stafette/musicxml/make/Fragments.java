package stafette.musicxml.make;

import jakarta.xml.bind.JAXBContext;
import jakarta.xml.bind.JAXBElement;
import jakarta.xml.bind.JAXBException;
import jakarta.xml.bind.Marshaller;
import java.io.StringReader;
import java.io.StringWriter;
import javax.xml.namespace.QName;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.audiveris.proxymusic.ScorePartwise;

/**
 * ProxyMusic objects to text and back, one element at a time. Loading takes about a second, once;
 * nothing loads it before something is written.
 */
public final class Fragments {
  private final Marshaller marshaller;

  public Fragments() {
    try {
      marshaller = Context.JAXB.createMarshaller();
      marshaller.setProperty(Marshaller.JAXB_FRAGMENT, true);
      marshaller.setProperty(Marshaller.JAXB_FORMATTED_OUTPUT, true);
    } catch (JAXBException e) {
      throw new IllegalStateException("ProxyMusic can't be set up to write", e);
    }
  }

  /** One element as text, in lines indented by four blanks a step. */
  public <T> String text(String name, Class<T> type, T value) {
    StringWriter out = new StringWriter();
    try {
      marshaller.marshal(new JAXBElement<>(new QName(name), type, value), out);
    } catch (JAXBException e) {
      throw new IllegalStateException("ProxyMusic can't write <" + name + ">", e);
    }
    return out.toString().replaceAll(" xmlns:\\w+=\"[^\"]*\"", "").replace("\r", "").strip();
  }

  /** The object for a piece of text that is one whole element. */
  public static <T> T read(String text, Class<T> type) {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    try {
      XMLStreamReader reader = factory.createXMLStreamReader(new StringReader(text));
      try {
        return Context.JAXB.createUnmarshaller().unmarshal(reader, type).getValue();
      } finally {
        reader.close();
      }
    } catch (JAXBException | XMLStreamException e) {
      throw new IllegalStateException("ProxyMusic can't read: " + text, e);
    }
  }

  private static final class Context {
    static final JAXBContext JAXB = create();

    private static JAXBContext create() {
      try {
        return JAXBContext.newInstance(ScorePartwise.class);
      } catch (JAXBException e) {
        throw new IllegalStateException("ProxyMusic can't be loaded", e);
      }
    }
  }
}
