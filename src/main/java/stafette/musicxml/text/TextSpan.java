package stafette.musicxml.text;

/**
 * A stretch of the file's decoded text.
 *
 * @param start index of the first character
 * @param end index after the last one
 */
public record TextSpan(int start, int end) {
  public boolean isEmpty() {
    return start == end;
  }

  public String in(String text) {
    return text.substring(start, end);
  }
}
