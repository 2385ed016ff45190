package stafette.score;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** Which tones of chords belong to a line. */
public sealed interface ToneChoice {
  /**
   * The tones chosen from those of a stroke, given from low to high; empty if it has no such tone.
   */
  List<Tone> from(List<Tone> lowToHigh);

  /** Applies the function of the kind at hand. */
  <T> T match(
      Function<? super All, ? extends T> all,
      Function<? super Bottom, ? extends T> bottom,
      Function<? super FromTop, ? extends T> fromTop);

  /** "top", "bottom", "2", "all"; {@link #parse} reads it. */
  String text();

  /** Reads what {@link #text} writes. */
  static Optional<ToneChoice> parse(String text) {
    String plain = text.trim().toLowerCase(Locale.ROOT);
    return switch (plain) {
      case "top" -> Optional.of(new FromTop(1));
      case "bottom" -> Optional.of(new Bottom());
      case "all" -> Optional.of(new All());
      default ->
          plain.matches("[1-9][0-9]?")
              ? Optional.of(new FromTop(Integer.parseInt(plain)))
              : Optional.empty();
    };
  }

  /** Every tone: chords stay chords. */
  record All() implements ToneChoice {
    @Override
    public <T> T match(
        Function<? super All, ? extends T> all,
        Function<? super Bottom, ? extends T> bottom,
        Function<? super FromTop, ? extends T> fromTop) {
      return all.apply(this);
    }

    @Override
    public List<Tone> from(List<Tone> lowToHigh) {
      return lowToHigh;
    }

    @Override
    public String text() {
      return "all";
    }
  }

  /** The lowest tone. */
  record Bottom() implements ToneChoice {
    @Override
    public <T> T match(
        Function<? super All, ? extends T> all,
        Function<? super Bottom, ? extends T> bottom,
        Function<? super FromTop, ? extends T> fromTop) {
      return bottom.apply(this);
    }

    @Override
    public List<Tone> from(List<Tone> lowToHigh) {
      return lowToHigh.subList(0, 1);
    }

    @Override
    public String text() {
      return "bottom";
    }
  }

  /**
   * The highest tone, the second from the top, and so on; single notes belong to the first only.
   *
   * @param number 1 for the top
   */
  record FromTop(int number) implements ToneChoice {
    @Override
    public <T> T match(
        Function<? super All, ? extends T> all,
        Function<? super Bottom, ? extends T> bottom,
        Function<? super FromTop, ? extends T> fromTop) {
      return fromTop.apply(this);
    }

    @Override
    public List<Tone> from(List<Tone> lowToHigh) {
      int index = lowToHigh.size() - number;
      return index < 0 ? List.of() : lowToHigh.subList(index, index + 1);
    }

    @Override
    public String text() {
      return number == 1 ? "top" : Integer.toString(number);
    }
  }
}
