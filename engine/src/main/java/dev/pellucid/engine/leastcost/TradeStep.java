package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.optimise.Movable;
import dev.pellucid.engine.optimise.Requirement;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Bound;
import java.util.Optional;

/**
 * In what unit a bound is told, and by how much it is moved when one asks what it costs. Here alone
 * this is decided, by the unit and the size of the bound as it is written:
 *
 * <ul>
 *   <li>percent: one point from 4 % on (protein, fat, fibre, ash, starch, moisture), a tenth of a
 *       point from 0.2 % on (amino acids, phosphorus, calcium), else a hundredth; shares of
 *       ingredients one point; g/kg the same;
 *   <li>mg/kg, µg/kg and IU: a tenth of the bound;
 *   <li>energy: 0.1 MJ/kg, 100 kcal/kg;
 *   <li>a mass over an energy: 1 g/MJ; a quotient without a unit: 0.1;
 *   <li>money: 0.01 for a kg, 10 for a tonne.
 * </ul>
 *
 * @param unit in which it is told
 * @param bare whether it is a quotient that is told without a unit; then {@code unit} says nothing
 * @param size of the step, in this unit
 */
record TradeStep(Unit unit, boolean bare, double size) {
  private static final double COARSE = 0.04;
  private static final double FINE = 0.002;
  private static final double POINT = 0.01;
  private static final double TENTH = 0.1;

  static TradeStep of(Movable one) {
    return one.of()
        .byKind(
            limit -> ofLimit(limit, one.bound()),
            practice -> ofPoint(practice.figure().bound().unit()),
            cap -> ofPoint(Unit.PERCENT),
            label -> of(label.verdict().claim().nutrient().unit(), one.bound()),
            order -> ofPoint(Unit.PERCENT),
            stock -> ofPoint(Unit.PERCENT));
  }

  /** Of the share of an ingredient. */
  static TradeStep ofPoint(Unit unit) {
    return new TradeStep(unit, false, unit.fromBase(POINT));
  }

  private static TradeStep ofLimit(Requirement.OfLimit one, double bound) {
    Bound.Limit written = one.limit().writtenInForce();
    Optional<Unit> unit = written.measured().map(amount -> amount.unit());
    if (unit.isEmpty()) {
      return new TradeStep(Unit.PERCENT, true, TENTH);
    }
    return one.limit()
        .subject()
        .byKind(
            sum -> of(unit.get(), bound),
            ratio -> of(unit.get(), bound),
            inclusion -> ofPoint(unit.get()),
            cost -> of(unit.get(), bound));
  }

  private static TradeStep of(Unit unit, double bound) {
    double step =
        switch (unit.kind()) {
          case SHARE -> ofShare(unit, bound);
          case ENERGY -> unit == Unit.KCAL_PER_KG ? 100 : TENTH;
          case SHARE_PER_ENERGY -> 1;
          case PRICE -> unit.fromBase(POINT);
          case ACTIVITY, MASS, LENGTH, TIME, TEMPERATURE, VOLUME, DENSITY -> tenthOf(unit, bound);
        };
    return new TradeStep(unit, false, step);
  }

  private static double ofShare(Unit unit, double bound) {
    if (unit == Unit.MG_PER_KG || unit == Unit.UG_PER_KG) {
      return tenthOf(unit, bound);
    }
    double points = bound >= COARSE ? 1 : bound >= FINE ? TENTH : TENTH * TENTH;
    return unit.fromBase(points * POINT);
  }

  private static double tenthOf(Unit unit, double bound) {
    return bound > 0 ? unit.fromBase(bound) * TENTH : 1;
  }

  /** A bound as it is told. */
  double told(double base) {
    return bare ? base : unit.fromBase(base);
  }

  /** A bound that is told so, in the base of its kind. */
  double base(double told) {
    return bare ? told : unit.toBase(told);
  }
}
