package stafette.musicxml.make;

import jakarta.xml.bind.JAXBElement;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.audiveris.proxymusic.Articulations;
import org.audiveris.proxymusic.EmptyPlacement;
import org.audiveris.proxymusic.EmptyTrillSound;
import org.audiveris.proxymusic.Notations;
import org.audiveris.proxymusic.ObjectFactory;
import org.audiveris.proxymusic.Ornaments;
import org.audiveris.proxymusic.Slur;
import org.audiveris.proxymusic.StartStop;
import org.audiveris.proxymusic.StartStopContinue;
import org.audiveris.proxymusic.StrongAccent;
import org.audiveris.proxymusic.Technical;
import org.audiveris.proxymusic.Tied;
import org.audiveris.proxymusic.TiedType;
import org.audiveris.proxymusic.Tremolo;
import org.audiveris.proxymusic.TremoloType;
import org.audiveris.proxymusic.Tuplet;
import org.audiveris.proxymusic.WavyLine;
import org.audiveris.proxymusic.YesNo;
import stafette.notation.BarItem;
import stafette.notation.BarItem.SoundingItem;
import stafette.notation.NoteSpans;
import stafette.notation.TremoloSign;
import stafette.score.Articulation;
import stafette.score.Stroke;

/** Makes what is attached to a note: ties, slurs, tuplet brackets, tremolo, articulations. */
final class NotationsMaker {
  private static final ObjectFactory FACTORY = new ObjectFactory();

  /** Unmeasured tremolos get the three slashes by which they are known. */
  private static final int UNMEASURED_SLASHES = 3;

  private NotationsMaker() {}

  /**
   * The notations of a note.
   *
   * @param struck the stroke, on the first of its values
   */
  static Optional<Notations> of(BarItem item, Optional<Stroke> struck, NoteSpans spans) {
    Notations notations = new Notations();
    List<Object> list = notations.getTiedOrSlurOrTuplet();
    item.sound().ifPresent(sound -> addTied(list, sound));
    if (spans.slur().stops()) {
      list.add(slur(StartStopContinue.STOP));
    }
    if (spans.slur().starts()) {
      list.add(slur(StartStopContinue.START));
    }
    if (item.edge().starts()) {
      list.add(tuplet(StartStop.START, item));
    }
    if (item.edge().stops()) {
      list.add(tuplet(StartStop.STOP, item));
    }
    addTrill(list, spans.trill());
    if (struck.isPresent()) {
      item.sound()
          .flatMap(SoundingItem::tremolo)
          .ifPresent(sign -> list.add(tremolo(type(sign), sign.slashes())));
      addMarks(list, struck.get());
    }
    return list.isEmpty() ? Optional.empty() : Optional.of(notations);
  }

  private static void addTied(List<Object> list, SoundingItem sound) {
    if (!sound.first()) {
      list.add(tied(TiedType.STOP));
    }
    if (!sound.last()) {
      list.add(tied(TiedType.START));
    }
  }

  private static void addMarks(List<Object> list, Stroke stroke) {
    if (stroke.isTremolo()) {
      list.add(tremolo(TremoloType.SINGLE, UNMEASURED_SLASHES));
    }
    Set<Articulation> marks = stroke.articulations();
    Technical bowing = new Technical();
    if (marks.contains(Articulation.UP_BOW)) {
      bowing.getUpBowOrDownBowOrHarmonic().add(FACTORY.createTechnicalUpBow(new EmptyPlacement()));
    }
    if (marks.contains(Articulation.DOWN_BOW)) {
      bowing
          .getUpBowOrDownBowOrHarmonic()
          .add(FACTORY.createTechnicalDownBow(new EmptyPlacement()));
    }
    if (!bowing.getUpBowOrDownBowOrHarmonic().isEmpty()) {
      list.add(bowing);
    }
    Articulations articulations = new Articulations();
    marks.stream()
        .sorted()
        .flatMap(mark -> element(mark).stream())
        .forEach(articulations.getAccentOrStrongAccentOrStaccato()::add);
    if (!articulations.getAccentOrStrongAccentOrStaccato().isEmpty()) {
      list.add(articulations);
    }
  }

  private static Optional<JAXBElement<?>> element(Articulation mark) {
    EmptyPlacement plain = new EmptyPlacement();
    return switch (mark) {
      case STACCATO -> Optional.of(FACTORY.createArticulationsStaccato(plain));
      case STACCATISSIMO -> Optional.of(FACTORY.createArticulationsStaccatissimo(plain));
      case SPICCATO -> Optional.of(FACTORY.createArticulationsSpiccato(plain));
      case TENUTO -> Optional.of(FACTORY.createArticulationsTenuto(plain));
      case DETACHED_LEGATO -> Optional.of(FACTORY.createArticulationsDetachedLegato(plain));
      case ACCENT -> Optional.of(FACTORY.createArticulationsAccent(plain));
      case STRONG_ACCENT ->
          Optional.of(FACTORY.createArticulationsStrongAccent(new StrongAccent()));
      case STRESS -> Optional.of(FACTORY.createArticulationsStress(plain));
      case UP_BOW, DOWN_BOW -> Optional.empty();
    };
  }

  private static TremoloType type(TremoloSign sign) {
    return switch (sign.place()) {
      case ON_STEM -> TremoloType.SINGLE;
      case TO_NEXT -> TremoloType.START;
      case FROM_LAST -> TremoloType.STOP;
    };
  }

  private static Ornaments tremolo(TremoloType type, int slashes) {
    Tremolo tremolo = new Tremolo();
    tremolo.setType(type);
    tremolo.setValue(slashes);
    Ornaments ornaments = new Ornaments();
    ornaments.getTrillMarkOrTurnOrDelayedTurn().add(FACTORY.createOrnamentsTremolo(tremolo));
    return ornaments;
  }

  private static void addTrill(List<Object> list, NoteSpans.Reach trill) {
    Ornaments ornaments = new Ornaments();
    List<JAXBElement<?>> signs = ornaments.getTrillMarkOrTurnOrDelayedTurn();
    if (trill.stops()) {
      signs.add(FACTORY.createOrnamentsWavyLine(wavyLine(StartStopContinue.STOP)));
    }
    if (trill.starts()) {
      signs.add(FACTORY.createOrnamentsTrillMark(new EmptyTrillSound()));
      signs.add(FACTORY.createOrnamentsWavyLine(wavyLine(StartStopContinue.START)));
    }
    if (!signs.isEmpty()) {
      list.add(ornaments);
    }
  }

  private static WavyLine wavyLine(StartStopContinue type) {
    WavyLine line = new WavyLine();
    line.setType(type);
    line.setNumber(1);
    return line;
  }

  private static Tied tied(TiedType type) {
    Tied tied = new Tied();
    tied.setType(type);
    return tied;
  }

  private static Slur slur(StartStopContinue type) {
    Slur slur = new Slur();
    slur.setType(type);
    slur.setNumber(1);
    return slur;
  }

  private static Tuplet tuplet(StartStop type, BarItem item) {
    Tuplet tuplet = new Tuplet();
    tuplet.setType(type);
    tuplet.setNumber(1);
    if (type == StartStop.START) {
      tuplet.setBracket(item.beams().isEmpty() ? YesNo.YES : YesNo.NO);
    }
    return tuplet;
  }
}
