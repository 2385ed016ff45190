package stafette.musicxml.text;

import java.nio.charset.Charset;
import java.util.List;
import java.util.Optional;
import stafette.score.Transposition;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Rational;

/**
 * The text that a score was read from, and where in it everything stands. Offsets count characters
 * of {@link #text}.
 *
 * @param text the whole document, decoded, without byte-order mark, line ends as in the file
 * @param charset how it was encoded
 * @param byteOrderMark whether the file begins with one
 * @param version the version that the root states, "1.0" if it states none
 * @param partList the whole part-list element
 * @param parts in the order in which they stand
 */
public record Origin(
    String text,
    Charset charset,
    boolean byteOrderMark,
    String version,
    TextSpan partList,
    List<PartText> parts) {
  public Origin {
    parts = List.copyOf(parts);
  }

  /** The first part of that id. */
  public Optional<PartText> part(String id) {
    return parts.stream().filter(part -> part.id().equals(id)).findFirst();
  }

  /** The file's own line end. */
  public String lineEnd() {
    int feed = text.indexOf('\n');
    return feed > 0 && text.charAt(feed - 1) == '\r' ? "\r\n" : "\n";
  }

  /**
   * One part.
   *
   * @param id as in the file; may be empty
   * @param whole from {@code <part} to {@code </part>}, both included
   * @param scorePart its score-part element in the part-list; empty if there is none
   * @param measures in order
   */
  public record PartText(
      String id, TextSpan whole, Optional<TextSpan> scorePart, List<MeasureText> measures) {
    public PartText {
      measures = List.copyOf(measures);
    }
  }

  /**
   * One measure of one part.
   *
   * @param whole from {@code <measure} to the end of {@code </measure>}, or the whole of {@code
   *     <measure …/>}
   * @param startTag the start tag, or the whole empty element
   * @param empty whether it is written as an empty element
   * @param attributes what is in force when it begins, before anything that stands in it
   * @param elements its children in document order
   */
  public record MeasureText(
      TextSpan whole,
      TextSpan startTag,
      boolean empty,
      Attributes attributes,
      List<ElementText> elements) {
    public MeasureText {
      elements = List.copyOf(elements);
    }
  }

  /**
   * One child of a measure.
   *
   * @param name the element's name
   * @param span the whole element
   * @param onset where the cursor stands when it begins; for a further note of a chord, where the
   *     chord begins
   * @param attributes what is in force once it has been read: differs from the element before only
   *     after an attributes element
   * @param note what a note element says, for note elements only
   */
  public record ElementText(
      String name, TextSpan span, Position onset, Attributes attributes, Optional<NoteText> note) {}

  /**
   * What a note element says.
   *
   * @param staff counted from 1
   * @param voice its voice, "1" if it names none
   * @param length its duration; zero for a grace note
   * @param rest whether it is a rest
   * @param chord whether it belongs to the note before
   * @param grace whether it is a grace note
   * @param cue whether it is a cue note
   * @param tiedFrom whether it is tied to a note before
   * @param key the sounding key of its tone ({@link stafette.score.Tone#key}); 0 for a rest
   */
  public record NoteText(
      int staff,
      String voice,
      Length length,
      boolean rest,
      boolean chord,
      boolean grace,
      boolean cue,
      boolean tiedFrom,
      int key) {}

  /**
   * What is in force at a place of a part.
   *
   * @param divisions per quarter note, above zero; hardly ever a fraction
   * @param fifths of the key as written in this part
   * @param transposition from written to sounding
   * @param staves how many the part has
   * @param clefs of each staff, from the first: sign and line, such as "G2"
   * @param time the time signature as written, such as "6/8"; empty if none was stated
   */
  public record Attributes(
      Rational divisions,
      int fifths,
      Transposition transposition,
      int staves,
      List<String> clefs,
      String time) {
    public Attributes {
      clefs = List.copyOf(clefs);
    }
  }
}
