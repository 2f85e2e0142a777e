package dev.pellucid.engine.workspace;

import dev.pellucid.engine.check.Rules;
import dev.pellucid.engine.data.DataFileKind;
import dev.pellucid.engine.records.BatchRecordCheck;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import java.util.Comparator;
import java.util.Optional;

/**
 * The order in which findings are to be fixed: what others hang on comes first. So settings come
 * before the rest of the data, then premixes, profiles, recipes, lots and records; and in a recipe
 * what is wrong with its words and its shape comes before the limits that are broken by it. Notes
 * come last, for nothing has to be done about them.
 */
public final class FixOrder {
  /** Behind every rank of a rule. */
  private static final int LAST = 9;

  /** Compares findings by it; within a file they stand in the order of its lines. */
  public static final Comparator<Finding> ORDER =
      Comparator.<Finding, Boolean>comparing(one -> one.severity() == Severity.NOTE)
          .thenComparingInt(one -> rank(one.span().file().path(), one))
          .thenComparing(one -> one.span().file().path())
          .thenComparingInt(one -> one.code().equals(Causes.CODE) ? LAST : Rules.rank(one))
          .thenComparing(Comparator.naturalOrder());

  private static final int OTHER_DATA = 3;
  private static final int LOTS = 8;

  private FixOrder() {}

  private static int rank(String path, Finding finding) {
    if (path.endsWith(".premix")) {
      return 5;
    }
    if (path.endsWith(".limits")) {
      return 6;
    }
    if (path.endsWith(".recipe")) {
      return 7;
    }
    if (path.endsWith(".figures")) {
      return 11;
    }
    Optional<DataFileKind> kind = DataFileKind.of(path);
    return kind.isPresent() ? rank(kind.get(), finding) : OTHER_DATA;
  }

  private static int rank(DataFileKind kind, Finding finding) {
    return switch (kind) {
      case SETTINGS -> 0;
      case SOURCES, GROUPS, RETENTION, NUTRIENTS, SPECIES -> 1;
      case INGREDIENTS -> 2;
      case BOUNDS, SPREADS, DENSITIES, STEAM, CAUTIONS, SEQUENCE -> OTHER_DATA;
      case PLANT, LABEL, PRICES -> 4;
      // What is wrong with the words of a delivery is data; what the store lacks follows from all.
      case LOTS -> finding.code().text().startsWith("data-") ? 4 : LOTS;
      // What shows in one record may come of a slip in another.
      case PLANS -> 9;
      case BATCHES -> BatchRecordCheck.isConsequence(finding) ? 10 : 9;
    };
  }
}
