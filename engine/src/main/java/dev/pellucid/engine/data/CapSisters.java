package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Ingredient.Cap;
import dev.pellucid.engine.data.MeantContent.Written;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import dev.pellucid.measure.Unit;
import dev.pellucid.text.BundledPath;
import dev.pellucid.text.Choices;
import dev.pellucid.text.Meant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Each cap beside the other caps of its ingredient and those of its sisters: one that is many times
 * off what they lead to expect is most often a slipped point, and {@code none} where all others
 * have a figure is most often a figure that was lost. Of an ingredient the cap that is off most is
 * told, for the others look off beside it; so of sisters.
 *
 * <p>Three and a half times: common practice, no source; by it a cap ten times off is nearer to
 * what is expected once its point is put right.
 */
final class CapSisters {
  static final Code CODE = new Code("data-cap-far-off");

  private static final double FAR = 3.5;

  private final Collection<Ingredient> ingredients;
  private final Remarks remarks;
  private final Caps caps;
  private final Set<String> said = new HashSet<>();
  private final Map<String, Off> farthest = new TreeMap<>();

  CapSisters(Collection<Ingredient> ingredients, Remarks remarks) {
    this.ingredients = ingredients;
    this.remarks = remarks;
    this.caps = new Caps(ingredients);
    for (Finding finding : remarks.findings()) {
      said.add(finding.span().file().path());
    }
  }

  /**
   * A cap that is far off.
   *
   * @param expected a power of ten
   * @param by how far it lies from that, in powers of ten
   */
  private record Off(Ingredient of, Cap cap, double expected, double by) {
    double share() {
      return Math.pow(10, expected);
    }
  }

  void look() {
    List<Ingredient> sound = new ArrayList<>(ingredients);
    sound.removeIf(one -> !isLookedAt(one.declared().file().path()) || hasLostFigure(one));
    for (Ingredient one : sound) {
      Off off = farthest(one);
      if (off != null) {
        farthest.put(one.name(), off);
      }
    }
    for (Off off : farthest.values()) {
      if (!hasSisterFartherOff(off)) {
        remarks.add(finding(off));
      }
    }
  }

  /** What comes with the program, or has a finding already, only stands beside the others. */
  private boolean isLookedAt(String path) {
    return !said.contains(path) && !BundledPath.is(path);
  }

  private @Nullable Off farthest(Ingredient one) {
    Off farthest = null;
    for (Cap cap : one.caps()) {
      OptionalDouble expected =
          Caps.isFigure(cap) ? caps.expected(one, cap) : OptionalDouble.empty();
      if (expected.isPresent()) {
        double by = Math.abs(Caps.power(cap) - expected.getAsDouble());
        Off off = new Off(one, cap, expected.getAsDouble(), by);
        farthest = farthest == null || isFarther(off, farthest) ? off : farthest;
      }
    }
    return farthest != null
            && Closeness.isAbove(farthest.by(), Math.log10(FAR))
            && !farthest.cap().onPurpose()
        ? farthest
        : null;
  }

  /** Of two caps that are off from each other alone, that which is farther from all others. */
  private boolean isFarther(Off one, Off other) {
    return Math.abs(one.by() - other.by()) < 1e-6
        ? caps.fromMiddle(one.cap()) > caps.fromMiddle(other.cap())
        : one.by() > other.by();
  }

  private boolean hasSisterFartherOff(Off off) {
    for (Off other : farthest.values()) {
      boolean sister = !Collections.disjoint(other.of().groups(), off.of().groups());
      if (sister && other.by() > off.by() && other.cap().species().equals(off.cap().species())) {
        return true;
      }
    }
    return false;
  }

  private Finding finding(Off off) {
    Cap cap = off.cap();
    double least = off.share() / FAR;
    double most = off.share() * FAR;
    Optional<Written> written = Written.of(cap.asWritten());
    Optional<String> meant =
        written.isPresent()
            ? MeantContent.of(
                written.get(), Unit.PERCENT, share -> share >= least && share <= most && share <= 1)
            : Optional.empty();
    Finding finding =
        Finding.warning(
            CODE,
            cap.place(),
            "the cap of "
                + off.of().name()
                + " for "
                + cap.species()
                + " is "
                + KeyFindings.shown(cap.asWritten())
                + ", from "
                + Choices.all(witnesses(off))
                + " follows one of about "
                + Figures.plain(Double.parseDouble(Figures.fixed(off.share() * 100, 1)))
                + " %");
    return (meant.isPresent() ? finding.helping(Meant.question(meant.get())) : finding)
        .helping("if it is so, write on-purpose: yes beside it");
  }

  /** From what the expected cap follows. */
  private List<String> witnesses(Off off) {
    List<String> words = new ArrayList<>();
    for (Cap own : off.of().caps()) {
      if (Caps.isFigure(own) && !own.species().equals(off.cap().species())) {
        words.add(own.asWritten() + " for " + own.species());
      }
    }
    if (off.of().usualShare().isPresent()) {
      words.add("the usual share");
    } else if (caps.hasAlike(off.of(), off.cap().species())) {
      words.add("the caps of " + Choices.all(new TreeSet<>(off.of().groups())));
    }
    return words;
  }

  /** Where there is none and the others have a figure; then these look off beside it. */
  private boolean hasLostFigure(Ingredient one) {
    boolean lost = false;
    for (Cap cap : one.caps()) {
      boolean none = cap.most().isEmpty() && !cap.onPurpose();
      Optional<String> others = none ? othersWithFigures(one, cap) : Optional.empty();
      if (others.isPresent()) {
        remarks.add(lost(one, cap, others.get()));
        lost = true;
      }
    }
    return lost;
  }

  private static Finding lost(Ingredient one, Cap none, String others) {
    return Finding.warning(
            CODE,
            none.place(),
            "the cap of " + one.name() + " for " + none.species() + " is none, " + others)
        .helping("write the most that " + none.species() + " take, with its reason")
        .helping("if there is no most, write on-purpose: yes beside it");
  }

  /** The others that all have a figure: those of the ingredient, else those of a group. */
  private Optional<String> othersWithFigures(Ingredient one, Cap none) {
    List<String> words = new ArrayList<>();
    int others = 0;
    for (Cap own : one.caps()) {
      others += own.equals(none) ? 0 : 1;
      if (!own.equals(none) && Caps.isFigure(own)) {
        words.add(own.asWritten() + " for " + own.species());
      }
    }
    boolean allOfGroups = true;
    Optional<String> group = Optional.empty();
    for (String name : new TreeSet<>(one.groups())) {
      int like = caps.others(one, name, none.species());
      boolean all = caps.figures(one, name, none.species()).size() == like;
      allOfGroups &= all;
      if (group.isEmpty() && all && like >= Caps.SISTERS) {
        group = Optional.of("all " + like + " others of " + name + " have one");
      }
    }
    boolean allOwn = others >= Caps.SISTERS && words.size() == others;
    return allOwn && allOfGroups ? Optional.of("its others are " + Choices.all(words)) : group;
  }
}
