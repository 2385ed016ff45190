package stafette.musicxml.read;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import stafette.musicxml.text.Element;
import stafette.score.Dynamic;

/** What marks of dynamics leave in force. */
public final class DynamicMark {
  /**
   * What stays in force after each mark. Marks for a single attack (sf, rfz, fz …) leave it as it
   * was, and are not listed.
   */
  private static final Map<String, Dynamic> LEFT =
      Map.ofEntries(
          Map.entry("n", Dynamic.PPP),
          Map.entry("pppppp", Dynamic.PPP),
          Map.entry("ppppp", Dynamic.PPP),
          Map.entry("pppp", Dynamic.PPP),
          Map.entry("ppp", Dynamic.PPP),
          Map.entry("pp", Dynamic.PP),
          Map.entry("sfpp", Dynamic.PP),
          Map.entry("p", Dynamic.P),
          Map.entry("fp", Dynamic.P),
          Map.entry("sfp", Dynamic.P),
          Map.entry("sfzp", Dynamic.P),
          Map.entry("mp", Dynamic.MP),
          Map.entry("mf", Dynamic.MF),
          Map.entry("f", Dynamic.F),
          Map.entry("pf", Dynamic.F),
          Map.entry("ff", Dynamic.FF),
          Map.entry("fff", Dynamic.FFF),
          Map.entry("ffff", Dynamic.FFF),
          Map.entry("fffff", Dynamic.FFF),
          Map.entry("ffffff", Dynamic.FFF));

  private DynamicMark() {}

  /** What a dynamics element leaves in force; empty if what was there before goes on. */
  public static Optional<Dynamic> leftBy(Element dynamics) {
    return dynamics.children().stream()
        .map(mark -> mark.name().equals("other-dynamics") ? mark.text() : mark.name())
        .flatMap(mark -> leftBy(mark).stream())
        .reduce((first, last) -> last);
  }

  /** What one mark means, by its name, such as "sfp". */
  public static Optional<Dynamic> leftBy(String mark) {
    return Optional.ofNullable(LEFT.get(mark.toLowerCase(Locale.ROOT)));
  }
}
