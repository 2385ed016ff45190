package stafette.musicxml.write;

import jakarta.xml.bind.JAXBElement;
import java.math.BigInteger;
import java.util.Locale;
import java.util.Optional;
import javax.xml.namespace.QName;
import org.audiveris.proxymusic.AboveBelow;
import org.audiveris.proxymusic.Direction;
import org.audiveris.proxymusic.DirectionType;
import org.audiveris.proxymusic.Dynamics;
import org.audiveris.proxymusic.Empty;
import org.audiveris.proxymusic.FormattedTextId;
import stafette.musicxml.write.Assigned.Sign;
import stafette.score.Dynamic;

/** Makes the direction elements of signs: words above the staff, dynamics below. */
final class SignMaker {
  private SignMaker() {}

  static Direction direction(Sign sign, Optional<Integer> staff) {
    Direction direction = new Direction();
    direction.setPlacement(sign.words().isPresent() ? AboveBelow.ABOVE : AboveBelow.BELOW);
    DirectionType type = new DirectionType();
    sign.words().ifPresent(words -> type.getWordsOrSymbol().add(words(words)));
    sign.dynamic().ifPresent(dynamic -> type.getDynamics().add(dynamics(dynamic)));
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

  private static Dynamics dynamics(Dynamic dynamic) {
    Dynamics dynamics = new Dynamics();
    QName name = new QName(dynamic.name().toLowerCase(Locale.ROOT));
    dynamics.getPOrPpOrPpp().add(new JAXBElement<>(name, Empty.class, new Empty()));
    return dynamics;
  }
}
