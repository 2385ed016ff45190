package stafette.score;

import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The voices from which a line is taken: one, or several that hands or players share.
 *
 * @param all by staff, each once, at least one
 */
public record Strands(List<Strand> all) {
  /** What stands between several in words: "1+2". */
  private static final String AND = "+";

  /**
   * @throws IllegalArgumentException if there is none
   */
  public Strands {
    all = all.stream().distinct().sorted().toList();
    if (all.isEmpty()) {
      throw new IllegalArgumentException("a line is taken from a voice at least");
    }
  }

  /** A single voice. */
  public static Strands of(int staff, String voice) {
    return new Strands(List.of(new Strand(staff, voice)));
  }

  static Strands of(Collection<Voice> voices) {
    return new Strands(voices.stream().map(Strand::of).toList());
  }

  /** Whether several voices share the line. */
  public boolean isShared() {
    return all.size() > 1;
  }

  /** Whether a voice is one of them. */
  public boolean has(int staff, String voice) {
    return all.contains(new Strand(staff, voice));
  }

  /** Whether one of them stands on a staff. */
  public boolean isOn(int staff) {
    return all.stream().anyMatch(strand -> strand.staff() == staff);
  }

  /** The uppermost staff, counted from 1. */
  public int staff() {
    return all.get(0).staff();
  }

  /** Their staves, from above. */
  public List<Integer> staves() {
    return all.stream().map(Strand::staff).distinct().toList();
  }

  /** The names of their voices. */
  public List<String> voices() {
    return all.stream().map(Strand::voice).distinct().toList();
  }

  /** "1", or "1+2". */
  public String staffText() {
    return joined(staves().stream());
  }

  /** "1", or "1+5". */
  public String voiceText() {
    return joined(voices().stream());
  }

  /** "staff 1, voice 1", "both hands" or "staff 1, voices 1+2". */
  public String inWords() {
    if (!isShared()) {
      return "staff " + staffText() + ", voice " + voiceText();
    }
    return staves().size() == 2 ? "both hands" : "staff " + staffText() + ", voices " + voiceText();
  }

  private static String joined(Stream<?> each) {
    return each.map(String::valueOf).collect(Collectors.joining(AND));
  }
}
