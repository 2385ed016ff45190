package stafette.musicxml.read;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stafette.musicxml.text.Element;
import stafette.musicxml.text.UnreadableScore;
import stafette.musicxml.text.XmlWalk;
import stafette.score.Attack;
import stafette.score.Contact;
import stafette.score.Manner;

/**
 * What changes a way of playing, and the words that say so: Italian, which all scores use, and the
 * usual English, German and French ones. Where several could begin at one place of a text, the
 * first of this list is meant.
 */
public enum MannerMark implements UnaryOperator<MannerInForce> {
  NOT_PLUCKED("(?:non|senza) pizz"),
  PLUCKED("pizz(?:\\b|icat)|gezupft\\b|pinc[ée]s?\\b"),
  BOWED("arco\\b|gestrichen\\b|mit (?:dem )?bogen\\b|archet\\b|bowed\\b"),
  DRAWN_WITH_WOOD("(?:col(?:l[ae]?)? leg(?:no|n|\\.)?|c\\. ?l(?:egno|\\.)) ?tratt"),
  STRUCK_WITH_WOOD(
      "col(?:l[ae]?)? leg(?:no\\b|n?\\.)|c\\. ?l(?:egno\\b|\\.)|mit (?:dem )?holze?\\b"
          + "|avec (?:le )?bois\\b|with (?:the )?wood\\b"),
  NOT_FLUTTERED("(?:non|senza|ohne|sans|no) (?:fl(?:at|ut)ter|flzg?\\b|frull)"),
  FLUTTERED("flatter|flatt\\b|flutter|flzg?\\b|frull"),
  AT_THE_BRIDGE(
      "(?:sul |s\\. ?)?pont(?:\\b|icel)|(?:am|auf dem|nahe am) steg\\b"
          + "|(?:sur le |au |près du )chevalet\\b|(?:at|on|near) (?:the )?bridge\\b"),
  OVER_THE_FINGERBOARD(
      "(?:sul(?:la)? |s\\. ?)tast(?:o\\b|iera\\b|\\.)|(?:am|auf dem) griffbr|sur la touche\\b"
          + "|(?:on|over) (?:the )?fingerboard\\b"),
  UNMUTED(
      "(?:senza |via |s\\. ?|lev\\w+ |togl\\w+ )(?:l[ae] |il |i )?sord|sord(?:in[aeio]|\\.)? via\\b"
          + "|(?:ohne|o\\.) (?:dämpf|dpf)|(?:dämpfer|dpf\\.?) (?:weg|fort|ab)"
          + "|(?:sans|[oô]te\\w*|enlev\\w+) (?:l[ae]s? )?sourd|sourdines? [oô]t"
          + "|(?:without|no|remove|take off) (?:the )?mutes?\\b|mutes? (?:off|out)\\b|unmuted?\\b"
          + "|open\\b(?! string)|offen\\b|ouverts?\\b|apert[oi]\\b"),
  MUTED(
      "sord(?:in[aeio])?\\b|dämpf(?:er|ern)\\b|gedämpft\\b|dpf\\b|sourd(?:ines?)?\\b"
          + "|mutes?\\b|muted\\b"),
  NO_TREMOLO("(?:non|senza|ohne|nicht|sans|no|not) trem"),
  TREMOLO("trem(?:ol|\\b)"),
  ORDINARY(
      "ord(?:in(?:ario|aire|ary)?)?\\b|nat(?:urale?|urel)?\\b|norm(?:al|ale)?\\b|gewöhnlich\\b");

  private static final Pattern WORDS =
      Pattern.compile(
          Arrays.stream(values())
              .map(mark -> "\\b(?<" + mark.group() + ">" + mark.words + ")")
              .collect(Collectors.joining("|")),
          Pattern.UNICODE_CHARACTER_CLASS);

  private final String words;

  MannerMark(String words) {
    this.words = words;
  }

  private String group() {
    return "mark" + ordinal();
  }

  @Override
  public MannerInForce apply(MannerInForce before) {
    return switch (this) {
      case NOT_PLUCKED -> before.without(Attack.PLUCKED);
      case PLUCKED -> before.with(Attack.PLUCKED).trembling(false);
      case BOWED -> before.with(Attack.PLAIN).trembling(false);
      case DRAWN_WITH_WOOD -> before.with(Attack.DRAWN_WITH_WOOD);
      case STRUCK_WITH_WOOD -> before.with(Attack.STRUCK_WITH_WOOD);
      case NOT_FLUTTERED -> before.without(Attack.FLUTTERED);
      case FLUTTERED -> before.with(Attack.FLUTTERED);
      case AT_THE_BRIDGE -> before.with(Contact.AT_THE_BRIDGE);
      case OVER_THE_FINGERBOARD -> before.with(Contact.OVER_THE_FINGERBOARD);
      case UNMUTED -> before.withMute(false);
      case MUTED -> before.withMute(true);
      case NO_TREMOLO -> before.trembling(false);
      case TREMOLO -> before.trembling(true);
      case ORDINARY -> ordinary(before);
    };
  }

  /** What was plucked or muted stays so. */
  private static MannerInForce ordinary(MannerInForce before) {
    return before
        .with(before.manner().isPlucked() ? Attack.PLUCKED : Attack.PLAIN)
        .with(Contact.PLAIN)
        .trembling(false);
  }

  /** What some words ask for, in order. */
  public static List<MannerMark> in(String text) {
    List<MannerMark> marks = new ArrayList<>();
    Matcher found = WORDS.matcher(text.toLowerCase(Locale.ROOT).replaceAll("\\s+", " "));
    while (found.find()) {
      Arrays.stream(values()).filter(mark -> found.group(mark.group()) != null).forEach(marks::add);
    }
    return marks;
  }

  /** What a direction asks for by signs and by words, which run on from element to element. */
  static List<MannerMark> inDirection(Element direction) {
    List<Element> signs =
        direction.all("direction-type").stream().flatMap(type -> type.children().stream()).toList();
    Stream<MannerMark> mutes =
        signs.stream()
            .filter(sign -> sign.name().equals("string-mute"))
            .map(sign -> sign.says("type", "off") ? UNMUTED : MUTED);
    String words =
        signs.stream()
            .filter(sign -> sign.name().equals("words"))
            .map(Element::text)
            .collect(Collectors.joining(" "));
    return Stream.concat(mutes, in(words).stream()).toList();
  }

  /** What is in force after some marks. */
  public static Manner after(Manner before, List<MannerMark> marks) {
    MannerInForce inForce = new MannerInForce(before, false);
    for (MannerMark mark : marks) {
      inForce = mark.apply(inForce);
    }
    return inForce.manner();
  }

  /** What an element of a measure asks for, as it stands in the text of a score that was read. */
  public static List<MannerMark> inElement(String text) {
    try {
      return inMeasure(XmlWalk.open(text).element());
    } catch (UnreadableScore e) {
      throw new IllegalStateException("what was read can't be read again: " + text, e);
    }
  }

  private static List<MannerMark> inMeasure(Element element) {
    return switch (element.name()) {
      case "direction" ->
          Stream.concat(
                  inDirection(element).stream(),
                  element.all("sound").stream().flatMap(sound -> inSound(sound).stream()))
              .toList();
      case "sound" -> inSound(element);
      default -> List.of();
    };
  }

  /** What a sound element asks for. */
  static List<MannerMark> inSound(Element sound) {
    Stream<MannerMark> plucked =
        sound.attribute("pizzicato").stream()
            .map(value -> value.equals("yes") ? PLUCKED : NOT_PLUCKED);
    return Stream.concat(plucked, played(sound)).toList();
  }

  /** What a note asks for itself alone. */
  static List<MannerMark> onNote(Element note) {
    Stream<MannerMark> technical =
        note.all("notations").stream()
            .flatMap(notations -> notations.all("technical").stream())
            .flatMap(signs -> signs.children().stream())
            .flatMap(MannerMark::technical);
    return Stream.concat(technical, played(note)).toList();
  }

  private static Stream<MannerMark> technical(Element sign) {
    return switch (sign.name()) {
      case "snap-pizzicato" -> Stream.of(PLUCKED);
      case "harmon-mute" -> Stream.of(MUTED);
      case "other-technical" -> in(sign.text()).stream();
      default -> Stream.empty();
    };
  }

  private static Stream<MannerMark> played(Element of) {
    return of.all("play").stream()
        .flatMap(play -> play.all("mute").stream())
        .flatMap(mute -> mute(mute.text()).stream());
  }

  /** What a kind of mute is for: a hand is none. */
  private static Optional<MannerMark> mute(String which) {
    return switch (which) {
      case "off" -> Optional.of(UNMUTED);
      case "stop-hand", "palm" -> Optional.empty();
      default -> Optional.of(MUTED);
    };
  }
}
