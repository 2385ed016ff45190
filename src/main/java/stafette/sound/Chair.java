package stafette.sound;

/**
 * Who makes sound, and how it reaches the ear.
 *
 * @param name of the player, or of a part in the background
 * @param program of General MIDI, 1 to 128
 * @param pan from 0 (left) to 127 (right), 64 being the middle
 * @param volume of the channel, 0 to 127
 * @param cents how far off the pitch
 * @param background whether it only accompanies
 */
public record Chair(
    String name, int program, int pan, int volume, double cents, boolean background) {}
