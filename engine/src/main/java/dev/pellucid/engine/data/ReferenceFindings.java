package dev.pellucid.engine.data;

import static dev.pellucid.engine.data.KeyFindings.shown;

import dev.pellucid.engine.data.Ingredient.Cap;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Span;
import java.util.Collection;
import java.util.List;

/** What can be wrong with names that data files use, and with names that they give. */
final class ReferenceFindings {
  static final Code SOURCE = new Code("data-unknown-source");
  static final Code GROUP = new Code("data-unknown-group");
  static final Code NUTRIENT = new Code("data-unknown-nutrient");
  static final Code SPECIES = new Code("data-unknown-species");
  static final Code STABILITY = new Code("data-unknown-stability");
  static final Code INGREDIENT = new Code("data-unknown-ingredient");
  static final Code PLANT = new Code("data-unknown-plant");
  static final Code LABEL = new Code("data-unknown-label");
  static final Code NAME_TWICE = new Code("data-name-twice");
  static final Code FORMERLY = new Code("data-formerly-clash");
  static final Code NUTRIENT_TWICE = new Code("data-nutrient-twice");
  static final Code PRICE_TWICE = new Code("data-price-twice");
  static final Code ORDERING = new Code("data-ordering");

  static final Code CAP_AND_NONE = new Code("data-cap-and-none");

  static final Code SOURCE_TAKES_OVER = new Code("own-source-takes-over");

  static final Code NO_FILE = new Code("data-no-file");

  static final List<Code> CODES =
      List.of(
          NO_FILE,
          SOURCE,
          SOURCE_TAKES_OVER,
          GROUP,
          NUTRIENT,
          SPECIES,
          STABILITY,
          INGREDIENT,
          PLANT,
          LABEL,
          NAME_TWICE,
          FORMERLY,
          NUTRIENT_TWICE,
          PRICE_TWICE,
          ORDERING,
          CAP_AND_NONE);

  private ReferenceFindings() {}

  /**
   * @param place where the folder begins
   * @param what it tells
   */
  static Finding noFile(Span place, String file, String what) {
    return Finding.error(
            NO_FILE, place, "there is no " + file + ", and other files name what it declares")
        .noting("it tells " + what + "; all feeds of the folder wait for it")
        .helping("bring it back from version control, or write it");
  }

  /**
   * @param where the file or folder that would declare it
   */
  static Finding unknown(
      Code code, Scalar name, String what, String where, Collection<String> names) {
    Finding finding =
        Finding.error(
            code, name.span(), shown(name.text()) + " is not " + what + " of this folder");
    Finding helped = KeyFindings.suggesting(finding, name, names, "there are ");
    return helped.helping((helped.helps().isEmpty() ? "" : "or ") + "declare it in " + where);
  }

  static Finding sourceTakesOver(Source own, Source along) {
    return Finding.warning(
            SOURCE_TAKES_OVER,
            own.declared(),
            own.id()
                + " is the name of another source that comes along, and this one takes its place: "
                + own.reliability().inWords()
                + " in place of "
                + along.reliability().inWords())
        .seeing("the other", along.declared())
        .noting("every figure that comes along with " + own.id() + " would rest on this one")
        .helping("give it a name of its own, and write that where your figures name it")
        .helping("if it is the same work, copy what the other has behind cite");
  }

  static Finding nameTwice(String name, String what, Span place, Span earlier, String earlierWhat) {
    return Finding.error(
            NAME_TWICE, place, name + " is the name of " + what + " and of " + earlierWhat)
        .seeing("first declared", earlier)
        .helping("give one of them another name, recipes could mean either");
  }

  static Finding formerly(Scalar old, String what, Span place) {
    return Finding.error(FORMERLY, old.span(), shown(old.text()) + " is now the name of " + what)
        .seeing("declared", place)
        .helping("leave the old name out here, recipes that use it could mean either");
  }

  static Finding nutrientTwice(Scalar nutrient, String block, Span earlier) {
    return Finding.error(
            NUTRIENT_TWICE, nutrient.span(), nutrient.text() + " is given twice " + block)
        .seeing("first given", earlier)
        .helping("keep the figure that you count on");
  }

  /** Of a species that has a cap and is said to have none. */
  static Finding capAndNone(Cap cap, Cap earlier) {
    Cap most = cap.most().isPresent() ? cap : earlier;
    return Finding.error(
            CAP_AND_NONE,
            cap.place(),
            cap.species() + " has a cap of " + most.asWritten() + " here and also none")
        .seeing("the other", earlier.place())
        .helping("keep the one that you count on, with its reason and source");
  }

  static Finding priceTwice(Scalar ingredient, Span earlier) {
    return Finding.error(
            PRICE_TWICE, ingredient.span(), ingredient.text() + " has two prices from the same day")
        .seeing("the other", earlier)
        .helping("keep one, or change the day of the file");
  }

  static Finding orderingTwice(Ordering one, Span earlier) {
    return Finding.error(
            PRICE_TWICE,
            one.place(),
            one.ingredient() + " is ordered in two ways from the same day")
        .seeing("the other", earlier)
        .helping("keep one, or change the day of the file");
  }

  static Finding orderingEmpty(Scalar ingredient) {
    return Finding.warning(
            ORDERING,
            ingredient.span(),
            "nothing is told of how " + ingredient.text() + " is ordered")
        .helping("write pack: 25 kg, lead-time: 14 d or supplier: behind it, or take it out");
  }

  static Finding packMoved(Ordering now, Ordering before, String pack, String then) {
    return Finding.warning(
            ORDERING,
            now.packAt(),
            now.ingredient() + " is sold by packs of " + pack + ", before it was " + then)
        .seeing("from " + before.from(), before.packAt())
        .helping("look for a slipped decimal point; if it is sold so now, leave it");
  }
}
