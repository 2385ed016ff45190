package stafette.musicxml.write;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import stafette.musicxml.write.ReadPage.Bar;
import stafette.musicxml.write.WrittenRule.Wrong;
import stafette.time.Rational;

/** Starts that wait for their stops. */
final class Pairs {
  /**
   * What tells one pair from another.
   *
   * @param within a voice or a staff
   */
  record Key(String number, String within) {}

  private record Start(Bar bar, Rational place) {}

  private final Map<Key, Start> open = new HashMap<>();
  private final String what;
  private final boolean leaves;
  private final Wrong wrong;

  /**
   * Pairs of one kind.
   *
   * @param what they are called
   * @param leaves whether one may end in another voice or staff, where its own has none
   */
  Pairs(String what, boolean leaves, Wrong wrong) {
    this.what = what;
    this.leaves = leaves;
    this.wrong = wrong;
  }

  void start(Key key, Bar bar, Rational place) {
    Optional.ofNullable(open.put(key, new Start(bar, place))).ifPresent(this::unstopped);
  }

  void stop(Key key, Bar bar, Rational place) {
    boolean stopped =
        open.remove(key) != null
            || (leaves
                && open.keySet().stream()
                    .filter(other -> other.number.equals(key.number))
                    .findFirst()
                    .filter(other -> open.remove(other) != null)
                    .isPresent());
    if (!stopped) {
      wrong.say(bar, what + " stops at " + place + " without a start");
    }
  }

  void end() {
    open.values().forEach(this::unstopped);
  }

  private void unstopped(Start start) {
    wrong.say(start.bar, what + " from " + start.place + " has no stop");
  }
}
