package stafette.trials;

import java.util.List;

/** Values that nobody expects where they stand. */
final class Odd {
  private static final List<String> NUMBERS =
      List.of(
          "0",
          "-1",
          "1",
          "2",
          "3",
          "5",
          "7",
          "0.5",
          "1.5",
          ".25",
          "1.",
          "1e3",
          "1e99999999",
          "1/3",
          "960",
          "1024",
          "1023",
          "127",
          "128",
          "255",
          "10000000",
          "999999999",
          "2147483647",
          "2147483648",
          "-2147483648",
          "99999999999999999999",
          "0.000000001",
          "NaN",
          "Infinity",
          "+4",
          " 4 ",
          "",
          "4 4",
          "0x10",
          "١٢",
          "½",
          "1,5",
          "--1",
          "1_000",
          "0000000004");

  private static final List<String> TEXTS =
      List.of(
          "",
          " ",
          "\t",
          "a\nb",
          "\u001b[31mred\u001b[0m",
          "\u0007",
          "\u0000",
          "\u009b2J",
          "\u202eright to left",
          "\u200b",
          "\ufeff",
          "\ufffe",
          "\ud83c\udfb5",
          "\ud83c",
          "A\u0308\u0323",
          "&amp;",
          "]]>",
          "<b>",
          "--",
          "{0}",
          "%s%n%d",
          "'{0}'",
          "\\u0041",
          "Flute 1",
          "flute 1",
          "FLUTE 1",
          "Flute 1; Flute 2",
          "Flute 1, Flute 2",
          "Flute = oboe",
          "=",
          ",",
          ":",
          "not Flute 1",
          "handoff",
          "P1",
          "#1",
          "Flöte",
          "フルート",
          "x".repeat(300),
          "x".repeat(20_000),
          "../../x",
          "-o",
          "--help",
          "@x",
          "null");

  private Odd() {}

  static String number(Dice dice) {
    return dice.in100(70) ? dice.of(NUMBERS) : Integer.toString(dice.between(-20, 2000));
  }

  static String text(Dice dice) {
    return dice.in100(85) ? dice.of(TEXTS) : dice.of(TEXTS) + dice.of(TEXTS);
  }

  static String any(Dice dice) {
    return dice.in100(50) ? number(dice) : text(dice);
  }
}
