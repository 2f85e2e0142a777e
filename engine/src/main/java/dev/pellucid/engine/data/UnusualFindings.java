package dev.pellucid.engine.data;

import dev.pellucid.engine.data.OddContents.Odd;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.Meant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What is said of a content that can hardly be so, at the figure that is most likely wrong. */
final class UnusualFindings {
  static final Code UNUSUAL = new Code("data-unusual");

  static final Code DIGESTIBILITY = new Code("data-hardly-digested");

  static final Code UNREAD = new Code("data-coefficient-not-read");

  static final List<Code> CODES = List.of(UNUSUAL, DIGESTIBILITY, UNREAD);

  private UnusualFindings() {}

  static Finding unusual(Odd odd) {
    return helped(
            Finding.warning(
                UNUSUAL,
                odd.content().place(),
                odd.nutrient().name() + " is " + shown(odd.content()) + ", " + odd.why()),
            odd)
        .helping("if it is so, widen what is usual there");
  }

  /** Lots that differ by nearly as much as they hold. */
  static Finding wide(String nutrient, Content told) {
    return Finding.warning(
            UNUSUAL,
            told.place(),
            nutrient + " is " + shown(told) + ", lots that differ by so much are hardly one thing")
        .noting("behind ± stands one standard deviation between lots")
        .helping("look whether the point slipped, or leave the deviation out");
  }

  /** The contents are more than the ingredient, and one of them is too high. */
  static Finding over(Odd odd, double sum, String whom) {
    return helped(
        Finding.error(
                NutrientFindings.OVER_WHOLE,
                odd.content().place(),
                "with "
                    + odd.nutrient().name()
                    + " "
                    + shown(odd.content())
                    + " the contents add up to "
                    + Figures.fixed(sum * 100, 2)
                    + " %"
                    + whom)
            .noting(odd.why()),
        odd);
  }

  /** The same where it is only the most likely one. */
  static Finding over(String name, Content slipped, double sum, String whom) {
    return Finding.error(
            NutrientFindings.OVER_WHOLE,
            slipped.place(),
            "with "
                + name
                + " "
                + shown(slipped)
                + " the contents add up to "
                + Figures.fixed(sum * 100, 2)
                + " %"
                + whom)
        .helping("a tenth of it would fit: look for a slipped decimal point here and beside it")
        .helping("or for figures on dry matter among those as fed");
  }

  /**
   * @param told the content of the whole; none where it is worked out
   */
  static Finding partOver(
      Nutrient part,
      Content content,
      String whole,
      double most,
      @Nullable Content told,
      Content place) {
    String headline =
        part.name()
            + " is "
            + shown(content)
            + ", more than the "
            + (told == null ? percent(most) : shown(told))
            + " of "
            + whole
            + " that it is a part of";
    Finding finding =
        Finding.error(NutrientFindings.PART_OVER_WHOLE, place.place(), headline)
            .helping("one of the two figures is wrong, or has the wrong unit");
    if (told == null) {
      return finding;
    }
    return place.equals(told)
        ? finding.seeing(part.name() + " written", content.place())
        : finding.seeing(whole + " written", told.place());
  }

  static Finding partsOver(
      String whole, @Nullable Content told, Content place, double sum, double most) {
    return Finding.error(
            NutrientFindings.PART_OVER_WHOLE,
            place.place(),
            "the parts of "
                + whole
                + " add up to "
                + percent(sum)
                + ", and "
                + whole
                + " is "
                + (told == null ? percent(most) : shown(told)))
        .helping("look for a slipped decimal point in it or in its parts");
  }

  /** The same at the figure that is not usual, which is most likely the wrong one. */
  static Finding at(Odd odd, Finding finding) {
    Finding moved =
        Finding.of(finding.code(), Severity.ERROR, odd.content().place(), finding.headline())
            .noting(odd.nutrient().name() + " is " + shown(odd.content()) + ", " + odd.why());
    return helped(moved, odd);
  }

  private static Finding helped(Finding finding, Odd odd) {
    Optional<String> meant = MeantContent.of(odd.content(), odd.nutrient().unit(), odd.fits());
    return finding
        .seeing("what is usual", odd.usual().place())
        .helping(
            meant.isPresent()
                ? Meant.question(meant.get())
                : "look for a slipped decimal point or a wrong unit");
  }

  static Finding hardlyDigested(String nutrient, Scalar written, double share) {
    Finding finding =
        Finding.warning(
            DIGESTIBILITY,
            written.span(),
            "only "
                + KeyFindings.shown(written.text())
                + " of "
                + nutrient
                + " is digested, in feed materials 30 to 100 % is usual");
    return (share >= 0.03 ? finding.helping(Meant.question(percent(share * 10))) : finding)
        .helping("look for a slipped decimal point, or leave it out if it was not measured");
  }

  /** Of what no nutrient of the folder is the digestible part. */
  static Finding unreadCoefficient(Scalar nutrient) {
    return Finding.warning(
            UNREAD,
            nutrient.span(),
            "nothing follows from the digestibility of "
                + nutrient.text()
                + ", no nutrient of this folder is its digestible part")
        .helping(
            "declare that nutrient in nutrients/, with \"digestible-of: "
                + nutrient.text()
                + "\", or leave the coefficient out");
  }

  private static String shown(Content content) {
    return KeyFindings.shown(content.asWritten());
  }

  private static String percent(double share) {
    return Figures.plain(share * 100) + " %";
  }
}
