package stafette.musicxml.read;

import java.util.Set;
import java.util.stream.Collectors;
import stafette.musicxml.text.Element;

/**
 * The beams of a note by their numbers; "1" is the outermost, which joins all notes of a group.
 *
 * @param begun those that begin at it
 * @param ended those that end at it
 * @param beamed whether it stands under any
 */
record NoteBeams(Set<String> begun, Set<String> ended, boolean beamed) {
  static NoteBeams on(Element note) {
    return new NoteBeams(saying("begin", note), saying("end", note), note.has("beam"));
  }

  private static Set<String> saying(String state, Element note) {
    return note.all("beam").stream()
        .filter(beam -> beam.text().equals(state))
        .map(beam -> beam.attribute("number").orElse("1"))
        .collect(Collectors.toUnmodifiableSet());
  }
}
