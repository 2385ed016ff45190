package stafette.musicxml.write;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stafette.limits.Act;
import stafette.limits.Instrument;
import stafette.musicxml.make.Fragments;
import stafette.musicxml.read.MannerMark;
import stafette.musicxml.share.Assigned;
import stafette.musicxml.share.Sign;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.ElementText;
import stafette.musicxml.text.Origin.MeasureText;
import stafette.musicxml.text.Origin.PartText;
import stafette.musicxml.text.Replacement;
import stafette.score.Attack;
import stafette.score.Contact;
import stafette.score.Manner;
import stafette.score.Stroke;

/**
 * Has a part say how its player plays what is written into it, and how its own notes go on. What
 * the instrument can't do is not said.
 */
final class MannerSigns {
  private final Assigned assigned;
  private final Set<Attack> attacks;
  private final boolean bowed;
  private final boolean takesMutes;

  /** As the part has it without what is written into it. */
  private Manner former = Manner.PLAIN;

  /** As the player has it. */
  private Manner now = Manner.PLAIN;

  private MannerSigns(Assigned assigned) {
    this.assigned = assigned;
    Instrument instrument = assigned.player().instrument();
    bowed = makes(instrument, Act.BOW);
    takesMutes = bowed || instrument.family().equals("brass");
    attacks =
        bowed
            ? EnumSet.of(Attack.PLUCKED, Attack.STRUCK_WITH_WOOD, Attack.DRAWN_WITH_WOOD)
            : makes(instrument, Act.TONGUE)
                ? EnumSet.of(Attack.FLUTTERED)
                : EnumSet.noneOf(Attack.class);
  }

  private static boolean makes(Instrument instrument, Act act) {
    return instrument.techniques().stream().anyMatch(technique -> technique.act() == act);
  }

  /** Adds what a part that holds nothing else has to say. */
  static void addTo(Assigned assigned) {
    MannerSigns signs = new MannerSigns(assigned);
    assigned.inOrder().forEach(signs::say);
  }

  /** Adds what a part has to say that is there already, and makes its own notes go on as before. */
  static List<Replacement> addTo(
      Assigned assigned, Origin origin, PartText part, Fragments fragments) {
    MannerSigns signs = new MannerSigns(assigned);
    SignText text = new SignText(origin, fragments);
    List<Replacement> restored = new ArrayList<>();
    Deque<Stroke> left = new ArrayDeque<>(assigned.inOrder());
    for (MeasureText measure : part.measures()) {
      List<ElementText> elements =
          measure.elements().stream().sorted(Comparator.comparing(ElementText::onset)).toList();
      for (ElementText element : elements) {
        while (!left.isEmpty() && !left.getFirst().onset().isAfter(element.onset())) {
          signs.say(left.removeFirst());
        }
        signs.read(marks(element, origin));
        if (assigned.leaves(element)) {
          signs
              .restored(element)
              .ifPresent(sign -> restored.add(text.before(element, measure, sign)));
        }
      }
    }
    left.forEach(signs::say);
    return restored;
  }

  /** Something that stands in the part. */
  private void read(List<MannerMark> marks) {
    former = able(MannerMark.after(former, marks));
    now = able(MannerMark.after(now, marks));
  }

  private static List<MannerMark> marks(ElementText element, Origin origin) {
    return element.name().equals("direction") || element.name().equals("sound")
        ? MannerMark.inElement(element.span().in(origin.text()))
        : List.of();
  }

  /** Whether an element of a part says what a sign would say, in whatever form. */
  static boolean says(ElementText element, Sign sign, Origin origin) {
    return element.onset().equals(sign.at())
        && sign.words()
            .map(MannerMark::in)
            .filter(marks -> !marks.isEmpty() && marks.equals(marks(element, origin)))
            .isPresent();
  }

  private void say(Stroke stroke) {
    Manner asked = able(stroke.manner());
    MannerWords.between(now, asked).ifPresent(words -> assigned.sign(stroke, words));
    now = asked;
  }

  private Optional<Sign> restored(ElementText note) {
    Optional<String> words = MannerWords.between(now, former);
    now = former;
    return words.map(said -> Sign.words(note.onset(), said));
  }

  /** As far as the instrument can; a trill goes on as it was attacked. */
  private Manner able(Manner manner) {
    Attack attack = manner.attack() == Attack.TRILLED ? now.attack() : manner.attack();
    return new Manner(
        attacks.contains(attack) ? attack : Attack.PLAIN,
        bowed ? manner.contact() : Contact.PLAIN,
        takesMutes && manner.muted());
  }
}
