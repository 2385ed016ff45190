package stafette.musicxml.write;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.score.Attack;
import stafette.score.Contact;
import stafette.score.Manner;

/** The usual words for a change of the way of playing. */
final class MannerWords {
  private MannerWords() {}

  /** What a player is told; empty if nothing changes. */
  static Optional<String> between(Manner before, Manner after) {
    List<String> words = new ArrayList<>();
    Manner now = before;
    if (endsWithUsual(before, after)) {
      words.add("ord.");
      now =
          new Manner(
              before.isPlucked() ? Attack.PLUCKED : Attack.PLAIN, Contact.PLAIN, before.muted());
    }
    if (now.attack() != after.attack()) {
      words.add(word(after.attack()));
    }
    if (now.contact() != after.contact()) {
      words.add(word(after.contact()));
    }
    if (now.muted() != after.muted()) {
      words.add(after.muted() ? "con sord." : "senza sord.");
    }
    return words.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", words));
  }

  /** Whether something ends that has no other opposite than what is usual. */
  private static boolean endsWithUsual(Manner before, Manner after) {
    return (before.contact() != Contact.PLAIN && after.contact() == Contact.PLAIN)
        || (before.attack() == Attack.FLUTTERED && after.attack() == Attack.PLAIN);
  }

  private static String word(Attack attack) {
    return switch (attack) {
      case PLAIN -> "arco";
      case PLUCKED -> "pizz.";
      case STRUCK_WITH_WOOD -> "col legno";
      case DRAWN_WITH_WOOD -> "col legno tratto";
      case FLUTTERED -> "frull.";
      case TRILLED -> throw new IllegalArgumentException("a trill has a sign and no words");
    };
  }

  private static String word(Contact contact) {
    return switch (contact) {
      case PLAIN -> "ord.";
      case AT_THE_BRIDGE -> "sul pont.";
      case OVER_THE_FINGERBOARD -> "sul tasto";
    };
  }
}
