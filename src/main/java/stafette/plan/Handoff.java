package stafette.plan;

/**
 * Where one turn takes over from another. The overlap runs from the first stroke of {@code enters}
 * to the last of {@code leaves}, the landing note; where the line rests in between it is empty.
 */
public record Handoff(Turn leaves, Turn enters) {
  /** How many strokes both play; zero or less where they share none. */
  public int shared() {
    return leaves.last() - enters.first() + 1;
  }
}
