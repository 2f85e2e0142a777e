package dev.pellucid.text;

import java.lang.Character.UnicodeScript;
import java.util.Set;

/**
 * Scripts in which some of what is {@link Unseen} is part of the spelling. They stand by themselves
 * because few texts hold such a sign, and Java takes long to load what it knows of scripts.
 */
final class Scripts {
  /** Their letters are parted and joined by signs without a width. */
  static final Set<UnicodeScript> JOINING =
      Set.of(
          UnicodeScript.ADLAM,
          UnicodeScript.ARABIC,
          UnicodeScript.BENGALI,
          UnicodeScript.DEVANAGARI,
          UnicodeScript.GUJARATI,
          UnicodeScript.GURMUKHI,
          UnicodeScript.HANIFI_ROHINGYA,
          UnicodeScript.JAVANESE,
          UnicodeScript.KANNADA,
          UnicodeScript.KHMER,
          UnicodeScript.MALAYALAM,
          UnicodeScript.MONGOLIAN,
          UnicodeScript.MYANMAR,
          UnicodeScript.NKO,
          UnicodeScript.ORIYA,
          UnicodeScript.SINHALA,
          UnicodeScript.SYRIAC,
          UnicodeScript.TAMIL,
          UnicodeScript.TELUGU,
          UnicodeScript.TIBETAN);

  /** Their words stand without spaces between them. */
  static final Set<UnicodeScript> WITHOUT_SPACES =
      Set.of(
          UnicodeScript.JAVANESE,
          UnicodeScript.KHMER,
          UnicodeScript.LAO,
          UnicodeScript.MYANMAR,
          UnicodeScript.NEW_TAI_LUE,
          UnicodeScript.TAI_LE,
          UnicodeScript.TAI_THAM,
          UnicodeScript.TAI_VIET,
          UnicodeScript.THAI,
          UnicodeScript.TIBETAN);

  /** Their letters have variants, chosen by a selector behind them. */
  static final Set<UnicodeScript> WITH_VARIANTS =
      Set.of(
          UnicodeScript.HAN,
          UnicodeScript.HIRAGANA,
          UnicodeScript.KATAKANA,
          UnicodeScript.MONGOLIAN,
          UnicodeScript.MYANMAR,
          UnicodeScript.PHAGS_PA);

  private Scripts() {}
}
