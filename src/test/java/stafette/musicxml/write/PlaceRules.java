package stafette.musicxml.write;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import stafette.musicxml.write.ReadPage.Bar;
import stafette.musicxml.write.ReadPage.Sign;

/** Nothing is said twice at one place. */
final class PlaceRules {
  static final List<WrittenRule> ALL =
      List.of(
          rule(
              "no text stands twice at a place",
              Set.of("words", "rehearsal"),
              sign -> List.of(sign.onset(), sign.says())),
          rule(
              "no two dynamics stand at a place of a staff",
              Set.of("dynamics"),
              sign -> List.of(sign.onset(), sign.staff())));

  private PlaceRules() {}

  /**
   * A rule for signs that may stand only once.
   *
   * @param once what may not be the same for two of them in a bar
   */
  private static WrittenRule rule(String name, Set<String> kinds, Function<Sign, Object> once) {
    return new WrittenRule(
        name,
        (source, page, part, wrong) -> {
          for (Bar bar : part.bars()) {
            Set<Object> met = new HashSet<>();
            bar.signs().stream()
                .filter(sign -> kinds.contains(sign.kind()) && !sign.says().isEmpty())
                .filter(sign -> !met.add(once.apply(sign)))
                .forEach(
                    sign ->
                        wrong.say(
                            bar,
                            "\""
                                + sign.says()
                                + "\" is one too many at "
                                + sign.onset()
                                + " of staff "
                                + sign.staff()));
          }
        });
  }
}
