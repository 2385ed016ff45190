package stafette.musicxml.read;

import stafette.score.Attack;
import stafette.score.Contact;
import stafette.score.Manner;

/**
 * How to play from a place on.
 *
 * @param trembling whether words ask for a tremolo
 */
public record MannerInForce(Manner manner, boolean trembling) {
  static final MannerInForce PLAIN = new MannerInForce(Manner.PLAIN, false);

  MannerInForce with(Attack attack) {
    return new MannerInForce(manner.with(attack), trembling);
  }

  /** Without one attack, if that is in force. */
  MannerInForce without(Attack attack) {
    return manner.attack() == attack ? with(Attack.PLAIN) : this;
  }

  MannerInForce with(Contact contact) {
    return new MannerInForce(manner.with(contact), trembling);
  }

  MannerInForce withMute(boolean on) {
    return new MannerInForce(manner.withMute(on), trembling);
  }

  MannerInForce trembling(boolean tremolo) {
    return new MannerInForce(manner, tremolo);
  }
}
