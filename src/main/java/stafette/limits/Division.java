package stafette.limits;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Some players of a section that is divided, who play as one: "Violins I outside" are the outside
 * players of two at a desk, "Violas desks 2 of 3" the desks of the second third.
 *
 * @param section the section's name
 * @param number which division, from 1
 * @param parts into how many the section is divided, two to {@link #MOST}
 */
public record Division(String section, int number, int parts) {
  public static final int MOST = 4;

  private static final List<String> OF_TWO = List.of("outside", "inside");
  private static final Pattern NAMED =
      Pattern.compile(
          "(.*\\S)\\s+(?:(outside|inside)|desks ([1-4]) of ([34]))", Pattern.CASE_INSENSITIVE);

  /** All divisions of a section in the order in which they stand in a score. */
  public static List<Division> of(String section, int parts) {
    return IntStream.rangeClosed(1, parts)
        .mapToObj(number -> new Division(section, number, parts))
        .toList();
  }

  /** The division of that name; empty if the name is that of no division. */
  public static Optional<Division> named(String name) {
    Matcher matcher = NAMED.matcher(name.trim());
    return matcher.matches()
        ? Optional.of(division(matcher)).filter(division -> division.number <= division.parts)
        : Optional.empty();
  }

  private static Division division(Matcher matcher) {
    String section = matcher.group(1);
    return matcher.group(2) == null
        ? new Division(
            section, Integer.parseInt(matcher.group(3)), Integer.parseInt(matcher.group(4)))
        : new Division(section, 1 + OF_TWO.indexOf(TypedNames.plain(matcher.group(2))), 2);
  }

  public String name() {
    return parts == 2
        ? section + " " + OF_TWO.get(number - 1)
        : section + " desks " + number + " of " + parts;
  }

  /** How much softer than the whole section it is: as much as it has fewer players alike. */
  public double softerDecibel() {
    return 10 * Math.log10(parts);
  }

  /** The section's instrument in the hands of so few. */
  public Instrument playing(Instrument whole) {
    return whole.with(whole.levelDecibel() - softerDecibel(), whole.breath(), whole.techniques());
  }
}
