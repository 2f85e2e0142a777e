package dev.pellucid.engine.check;

import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Profile;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import dev.pellucid.syntax.Amount;
import dev.pellucid.syntax.Bound;
import dev.pellucid.syntax.FeedFile.PremixFile;
import dev.pellucid.syntax.OverageLine;
import dev.pellucid.syntax.SupplyLine;
import dev.pellucid.text.Meant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A supply or an overage five times, or a fifth, of that of every sister premix. A supply for which
 * a profile asks no less is meant so.
 */
final class PremixTenTimesOff {
  static final Code SUPPLY = new Code("supply-ten-times-off");
  static final Code OVERAGE = new Code("overage-ten-times-off");

  private static final double FAR = 5;
  private static final double ROOM = 2;
  private static final int[] POINT = {-1, 1, -2, 2, -3, 3};

  private final List<Profile> profiles;
  private final List<Finding> out;

  PremixTenTimesOff(List<Profile> profiles, List<Finding> out) {
    this.profiles = profiles;
    this.out = out;
  }

  /** A figure of one premix and who it belongs to. */
  private record Told(String premix, Amount amount) {}

  void look(PremixFile premix, List<PremixFile> sisters) {
    for (SupplyLine line : PremixesTogether.supplied(premix).values()) {
      String nutrient = line.nutrient().text();
      List<Told> others = new ArrayList<>();
      for (PremixFile sister : sisters) {
        SupplyLine its = PremixesTogether.supplied(sister).get(nutrient);
        if (its != null && its.amount().unit().kind() == line.amount().unit().kind()) {
          others.add(new Told(sister.source().stem(), its.amount()));
        }
      }
      if (!isAskedFor(nutrient, line.amount())) {
        say(SUPPLY, premix, nutrient, line.amount(), others);
      }
    }
    Map<String, Amount> own = overages(premix);
    for (Map.Entry<String, Amount> one : own.entrySet()) {
      List<Told> others = new ArrayList<>();
      for (PremixFile sister : sisters) {
        Amount its = overages(sister).get(one.getKey());
        if (its != null) {
          others.add(new Told(sister.source().stem(), its));
        }
      }
      say(OVERAGE, premix, "overage of " + one.getKey(), one.getValue(), others);
    }
    lostOverages(premix, sisters, own);
  }

  /** Where the others weigh more of a source for what it loses, and this one takes it as it is. */
  private void lostOverages(PremixFile premix, List<PremixFile> sisters, Map<String, Amount> own) {
    if (premix.overage().isEmpty() || !premix.overage().get().whole()) {
      return;
    }
    for (SupplyLine line : PremixesTogether.supplied(premix).values()) {
      String source = line.from().text();
      List<Told> others = new ArrayList<>();
      for (PremixFile sister : sisters) {
        Amount its = overages(sister).get(source);
        if (its != null) {
          others.add(new Told(sister.source().stem(), its));
        }
      }
      if (!own.containsKey(source) && others.size() == sisters.size()) {
        Told first = others.get(0);
        out.add(
            Finding.warning(
                    PremixesTogether.LOST,
                    premix.overage().get().heading(),
                    premix.source().stem()
                        + " has no overage of "
                        + source
                        + "; "
                        + first.premix()
                        + " has "
                        + first.amount().asWritten()
                        + ", and all like premixes have one")
                .seeing("written in " + first.premix(), first.amount().span())
                .seeing("supplied here", line.from().span())
                .helping("if the line was lost, write it again")
                .about(new About(source, About.Side.NONE, List.of(premix.source().stem()))));
      }
    }
  }

  private static Map<String, Amount> overages(PremixFile premix) {
    Map<String, Amount> overages = new LinkedHashMap<>();
    if (premix.overage().isPresent()) {
      for (OverageLine line : premix.overage().get().lines()) {
        Optional<String> target =
            line.target()
                .byKind(named -> Optional.of(named.name().text()), below -> Optional.empty());
        Optional<Amount> extra =
            line.extra().byKind(of -> Optional.of(of.share()), per -> Optional.empty());
        if (target.isPresent() && extra.isPresent()) {
          overages.put(target.get(), extra.get());
        }
      }
    }
    return overages;
  }

  /** Whether a profile asks for about so much. */
  private boolean isAskedFor(String nutrient, Amount amount) {
    for (Profile profile : profiles) {
      for (Limit limit : profile.limits()) {
        if (limit.side() == Bound.Side.MIN
            && limit.subject().text().equals(nutrient)
            && limit.bound() <= amount.base()
            && amount.base() <= FAR * limit.bound()) {
          return true;
        }
      }
    }
    return false;
  }

  private void say(Code code, PremixFile premix, String what, Amount amount, List<Told> others) {
    if (others.size() < 2 || amount.base() <= 0) {
      return;
    }
    Told least = others.get(0);
    Told most = others.get(0);
    for (Told one : others) {
      least = one.amount().base() < least.amount().base() ? one : least;
      most = one.amount().base() > most.amount().base() ? one : most;
    }
    boolean above = Closeness.isAtLeast(amount.base(), FAR * most.amount().base());
    boolean below = Closeness.isAtMost(amount.base(), least.amount().base() / FAR);
    if (!above && !below) {
      return;
    }
    Told nearest = above ? most : least;
    String stem = premix.source().stem();
    Finding finding =
        Finding.warning(
                code,
                amount.span(),
                stem
                    + ": "
                    + what
                    + " "
                    + amount.asWritten()
                    + " is "
                    + Magnitude.times(amount.base(), nearest.amount().base())
                    + " the "
                    + nearest.amount().asWritten()
                    + " of "
                    + nearest.premix()
                    + ", and no like premix comes nearer")
            .seeing("written in " + nearest.premix(), nearest.amount().span())
            .about(new About(what, About.Side.NONE, List.of(stem)));
    Optional<String> meant =
        meant(amount, least.amount().base() / ROOM, most.amount().base() * ROOM);
    out.add(
        meant.isPresent()
            ? finding.helping(Meant.question(meant.get())).fixing(amount.span(), meant.get())
            : finding.helping("fix the figure, or the unit"));
  }

  private static Optional<String> meant(Amount amount, double low, double high) {
    for (int places : POINT) {
      double moved = amount.base() * Math.pow(10, places);
      if (moved >= low && moved <= high) {
        return Optional.of(
            Magnitude.moved(amount.figure(), places) + " " + amount.unitAsWritten().text());
      }
    }
    return Optional.empty();
  }
}
