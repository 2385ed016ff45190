package stafette.musicxml.make;

import jakarta.xml.bind.JAXBElement;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Optional;
import javax.xml.namespace.QName;
import org.audiveris.proxymusic.AboveBelow;
import org.audiveris.proxymusic.Dashes;
import org.audiveris.proxymusic.Direction;
import org.audiveris.proxymusic.DirectionType;
import org.audiveris.proxymusic.Dynamics;
import org.audiveris.proxymusic.Empty;
import org.audiveris.proxymusic.FontStyle;
import org.audiveris.proxymusic.FormattedTextId;
import org.audiveris.proxymusic.HarpPedals;
import org.audiveris.proxymusic.PedalTuning;
import org.audiveris.proxymusic.StartStopContinue;
import org.audiveris.proxymusic.Step;
import org.audiveris.proxymusic.Wedge;
import org.audiveris.proxymusic.WedgeType;
import stafette.limits.HarpPedals.Pedal;
import stafette.limits.HarpPedals.Setting;
import stafette.musicxml.share.Sign;

/** Makes the direction elements of signs: words above the staff, dynamics below. */
public final class SignMaker {
  private SignMaker() {}

  public static Direction direction(Sign sign, Optional<Integer> staff) {
    Direction direction = new Direction();
    boolean isAbove =
        sign.words().isPresent()
            || sign.kind() == Sign.SignKind.CHARACTER
            || sign.kind() == Sign.SignKind.PEDALS;
    direction.setPlacement(isAbove ? AboveBelow.ABOVE : AboveBelow.BELOW);
    DirectionType type = new DirectionType();
    switch (sign.kind()) {
      case PARTNER -> type.getWordsOrSymbol().add(small(sign.text()));
      case WORDS, PEDAL_WORDS -> type.getWordsOrSymbol().add(words(sign.text()));
      case CHARACTER, SWELL_WORDS -> type.getWordsOrSymbol().add(italic(sign.text()));
      case DYNAMIC -> type.getDynamics().add(dynamics(sign.text()));
      case LOUDER -> type.setWedge(wedge(WedgeType.CRESCENDO));
      case SOFTER -> type.setWedge(wedge(WedgeType.DIMINUENDO));
      case WEDGE_STOP -> type.setWedge(wedge(WedgeType.STOP));
      case DASHES -> type.setDashes(dashes(StartStopContinue.START));
      case DASHES_STOP -> type.setDashes(dashes(StartStopContinue.STOP));
      case PEDALS -> type.setHarpPedals(diagram(sign.pedals().orElseThrow()));
    }
    direction.getDirectionType().add(type);
    sign.voice().ifPresent(direction::setVoice);
    staff.ifPresent(number -> direction.setStaff(BigInteger.valueOf(number)));
    return direction;
  }

  private static FormattedTextId words(String words) {
    FormattedTextId text = new FormattedTextId();
    text.setValue(words);
    return text;
  }

  private static FormattedTextId small(String words) {
    FormattedTextId text = words(words);
    text.setFontSize("small");
    return text;
  }

  private static FormattedTextId italic(String words) {
    FormattedTextId text = words(words);
    text.setFontStyle(FontStyle.ITALIC);
    return text;
  }

  private static Wedge wedge(WedgeType type) {
    Wedge wedge = new Wedge();
    wedge.setType(type);
    wedge.setNumber(1);
    return wedge;
  }

  private static HarpPedals diagram(Setting setting) {
    HarpPedals diagram = new HarpPedals();
    for (Pedal pedal : setting.pedals()) {
      PedalTuning tuning = new PedalTuning();
      tuning.setPedalStep(Step.fromValue(pedal.letter().name()));
      tuning.setPedalAlter(BigDecimal.valueOf(pedal.alter()));
      diagram.getPedalTuning().add(tuning);
    }
    return diagram;
  }

  private static Dashes dashes(StartStopContinue type) {
    Dashes dashes = new Dashes();
    dashes.setType(type);
    dashes.setNumber(1);
    return dashes;
  }

  private static Dynamics dynamics(String name) {
    Dynamics dynamics = new Dynamics();
    dynamics.getPOrPpOrPpp().add(new JAXBElement<>(new QName(name), Empty.class, new Empty()));
    return dynamics;
  }
}
