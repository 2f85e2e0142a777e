package dev.pellucid.engine.resolve;

import dev.pellucid.engine.quantity.Share;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Amount;
import dev.pellucid.syntax.Section;
import dev.pellucid.syntax.ShareLine;
import dev.pellucid.text.Span;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The lines of {@code mix} and {@code coat} (or {@code carrier}) with their shares; the {@code
 * rest} takes what the others leave of 100 %. Sums are exact.
 */
final class Lines {
  static final Code TOTAL = new Code("total-is-off");
  static final Code NO_ROOM = new Code("no-room-for-rest");
  static final Code TWO_RESTS = new Code("two-rests");
  static final Code TWICE = new Code("listed-twice");
  static final Code REWORK_PLACE = new Code("rework-out-of-place");

  private final Materials materials;
  private final boolean ofFeed;
  private final List<Finding> findings;
  private final List<ShareLine> written = new ArrayList<>();
  private final List<ShareLine> rests = new ArrayList<>();
  private final List<Drawn> drawn = new ArrayList<>();
  private BigDecimal sum = BigDecimal.ZERO;
  private boolean read = true;

  /** A line as drawn up, before overage; the share is absent on the rest. */
  record Drawn(ShareLine written, Place place, Material material, Optional<Share> share) {
    boolean isRest() {
      return share.isEmpty();
    }
  }

  /**
   * @param ofFeed whether they are of a feed, which may take rework; else of a premix
   */
  Lines(Materials materials, boolean ofFeed, List<Finding> findings) {
    this.materials = materials;
    this.ofFeed = ofFeed;
    this.findings = findings;
  }

  /** Whether every line could be read, names something that is known, and stands there once. */
  boolean whole() {
    return read && drawn.size() == written.size();
  }

  void take(Section<ShareLine> section, Place place) {
    read &= section.whole();
    Map<String, Span> seen = new HashMap<>(2 * section.lines().size());
    for (ShareLine line : section.lines()) {
      Span first = seen.putIfAbsent(line.subject().text(), line.subject().span());
      if (first != null) {
        findings.add(
            Finding.error(TWICE, line.subject().span(), line.subject() + " stands here twice")
                .seeing("first written", first)
                .helping("keep one of the two, or put both shares on one line"));
        read = false;
      }
      written.add(line);
      new FreedomOfLine(findings).look(line, ofFeed);
      Optional<Share> share = share(line);
      if (share.isPresent()) {
        sum = sum.add(share.get().percent());
      } else {
        rests.add(line);
      }
      Optional<Material> material = material(line, place);
      if (material.isPresent()) {
        drawn.add(new Drawn(line, place, material.get(), share));
      }
    }
  }

  private Optional<Material> material(ShareLine line, Place place) {
    if (!line.rework()) {
      return materials.named(line.subject());
    }
    if (!ofFeed || place == Place.COAT) {
      findings.add(
          ofFeed
              ? Finding.error(REWORK_PLACE, line.subject().span(), "rework goes through the mixer")
                  .helping("move the line to mix")
              : Finding.error(
                      REWORK_PLACE,
                      line.subject().span(),
                      "rework goes into feeds, not into premixes")
                  .helping("take the line out, and write it under mix of a recipe"));
      return Optional.empty();
    }
    return materials.reworked(line.subject());
  }

  /** The exact share of a stated line, in percent. */
  static Optional<Share> share(ShareLine line) {
    return line.share()
        .byKind(stated -> Optional.of(exact(stated.amount())), rest -> Optional.empty());
  }

  /** An amount of a share, exactly. */
  static Share exact(Amount amount) {
    int places =
        switch (amount.unit()) {
          case G_PER_KG -> 1;
          case MG_PER_KG -> 4;
          case UG_PER_KG -> 7;
          default -> 0;
        };
    return new Share(amount.figure().movePointLeft(places));
  }

  /**
   * What the rest takes; where there is none, of no meaning. Empty where the total cannot stand.
   */
  Optional<Share> left(Span heading, Share stabilityExtra) {
    return addUp(heading, stabilityExtra) ? Optional.of(left()) : Optional.empty();
  }

  private Share left() {
    return Share.WHOLE.minus(new Share(sum));
  }

  /**
   * Whether the shares as written make 100 %, whatever their names mean; a finding where they do
   * not. Says nothing where a line could not be read.
   */
  boolean addUp(Span heading, Share stabilityExtra) {
    if (!read || !oneRestAtMost()) {
      return false;
    }
    return rests.isEmpty() ? isWhole(heading, stabilityExtra) : leavesRoom(rests.get(0));
  }

  /** Says so where more than one line is to take what the others leave. */
  boolean oneRestAtMost() {
    if (rests.size() > 1) {
      findings.add(
          Finding.error(
                  TWO_RESTS,
                  rests.get(1).share().span(),
                  "rest stands twice, and only one line can take what the others leave")
              .seeing("first rest", rests.get(0).share().span())
              .helping("give one of the two a share"));
    }
    return rests.size() < 2;
  }

  private boolean isWhole(Span heading, Share stabilityExtra) {
    Share total = new Share(sum).plus(stabilityExtra);
    if (total.compareTo(Share.WHOLE) == 0) {
      return true;
    }
    Share off = Share.WHOLE.minus(total);
    String with = stabilityExtra.isPositive() ? " with overage for stability" : "";
    findings.add(
        Finding.error(TOTAL, heading, "the lines add up to " + total + with + ", not to 100 %")
            .helping(
                off.isPositive()
                    ? off + " is missing: raise a line, or write rest on one"
                    : new Share(off.percent().negate())
                        + " is too much: lower a line, or write rest on one"));
    return false;
  }

  private boolean leavesRoom(ShareLine rest) {
    Share left = left();
    if (left.isNegative()) {
      ShareLine largest = largest(new Share(left.percent().negate()));
      findings.add(
          Finding.error(
                  NO_ROOM,
                  largest.share().span(),
                  "the lines add up to "
                      + new Share(sum)
                      + " without "
                      + rest.subject()
                      + ", so nothing is left for its rest")
              .labelled("the largest share")
              .seeing("rest written", rest.share().span())
              .helping(
                  "lower "
                      + largest.subject()
                      + " or others by "
                      + new Share(left.percent().negate())
                      + " at least")
              .helping("was a point or a figure mistyped?"));
      return false;
    }
    return true;
  }

  /** The largest of those that no bounds of their own hold, where any is larger than it may be. */
  private ShareLine largest(Share over) {
    Optional<ShareLine> free =
        written.stream()
            .filter(line -> share(line).isPresent() && line.within().isEmpty())
            .filter(line -> share(line).orElse(Share.ZERO).compareTo(over) > 0)
            .max(Comparator.comparing(line -> share(line).orElse(Share.ZERO)));
    return free.isPresent() ? free.get() : largest();
  }

  private ShareLine largest() {
    return written.stream()
        .filter(line -> share(line).isPresent())
        .max(Comparator.comparing(line -> share(line).orElse(Share.ZERO)))
        .orElseThrow();
  }

  List<Drawn> drawn() {
    return drawn;
  }
}
