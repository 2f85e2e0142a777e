package dev.pellucid.engine.linear;

import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.ModelEntity;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/**
 * The other way into ojAlgo, by a model that it first makes simpler and then solves by whatever it
 * thinks best. It is slower, and what it makes simpler it tells no prices of, so none is taken from
 * it; it is asked where the answer of the first does not prove.
 */
final class OjAlgoModel implements Simplex {
  @Override
  public Found find(Table scaled) {
    ExpressionsBasedModel model = new ExpressionsBasedModel();
    for (int j = 0; j < scaled.variables; j++) {
      Variable variable = model.newVariable("x" + j);
      bound(variable, scaled.low[j], scaled.high[j]);
      variable.weight(scaled.cost[j]);
    }
    for (int i = 0; i < scaled.constraints; i++) {
      Expression expression = model.newExpression("r" + i);
      for (int j = 0; j < scaled.variables; j++) {
        if (scaled.rows[i][j] != 0) {
          expression.set(j, scaled.rows[i][j]);
        }
      }
      bound(expression, scaled.rowLow[i], scaled.rowHigh[i]);
    }
    Optimisation.Result result = model.minimise();
    if (result.getState().isOptimal()) {
      double[] values = new double[scaled.variables];
      for (int j = 0; j < values.length; j++) {
        values[j] = result.doubleValue(j);
      }
      return new Found(State.OPTIMAL, values, new double[0]);
    }
    return switch (result.getState()) {
      case INFEASIBLE -> Found.none(State.INFEASIBLE);
      case UNBOUNDED -> Found.none(State.UNBOUNDED);
      default -> Found.none(State.NONE);
    };
  }

  private static void bound(ModelEntity<?> entity, double low, double high) {
    if (!Double.isInfinite(low)) {
      entity.lower(low);
    }
    if (!Double.isInfinite(high)) {
      entity.upper(high);
    }
  }
}
