package stafette.keep;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import java.util.Properties;

/** Which release of the program this is. */
public final class Release {
  private static final String NAME = read();

  private Release() {}

  /** The program with its version, as the build names it: "Stafette 1.0". */
  public static String text() {
    return NAME;
  }

  private static String read() {
    Properties properties = new Properties();
    try (InputStream in =
        Objects.requireNonNull(Release.class.getResourceAsStream("release.properties"))) {
      properties.load(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return properties.getProperty("name");
  }
}
