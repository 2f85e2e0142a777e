package dev.pellucid.engine.workspace;

import dev.pellucid.engine.check.Rules;
import dev.pellucid.engine.records.BatchRecordCheck;
import dev.pellucid.engine.records.Stock;
import dev.pellucid.engine.records.StoreCheck;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.engine.trend.MeasuredBatch;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * A whole folder, from what is kept of each of its recipes and what they share. It is worked out
 * anew from the same each time, in the order of paths, whatever was looked at first.
 *
 * @param findings in the order in which they are to be fixed
 * @param batches how many batch records were held against their recipes
 * @param limits how many limits were judged
 * @param judged by whom these limits are asked
 * @param notChecked codes of recipes whose limits could not be judged, with the files to be fixed
 *     first
 * @param unmade codes of recipes that must not be made as they are written
 * @param stock what is left of each lot
 * @param measured what was found of the batches of recipes that were made and judged, in no order
 * @param faulty paths of files in which there is an error
 * @param faults what broke in this program
 */
public record Whole(
    List<Finding> findings,
    int recipes,
    int batches,
    int limits,
    Judged judged,
    List<String> notChecked,
    List<String> unmade,
    Stock stock,
    List<MeasuredBatch> measured,
    Set<String> faulty,
    List<Throwable> faults) {

  /** What recipes of a folder come to together. */
  public static Whole of(Shared shared, List<Summary> recipes) {
    PastRecords.Said own = PastRecords.of(shared);
    List<Finding> findings = new ArrayList<>(own.without(shared.findings()));
    recipes.forEach(one -> findings.addAll(one.findings()));
    Sisters sisters = Sisters.of(recipes);
    findings.addAll(sisters.findings());
    findings.addAll(WholeFolder.findings(shared, recipes));
    Collection<ResolvedPremix> premixes = shared.resolver().premixes().values();
    List<BatchRecordCheck.Looked> looked = new ArrayList<>();
    Map<String, List<Finding>> ofRecords = new LinkedHashMap<>();
    for (Summary one : recipes) {
      looked.add(one.records());
      ofRecords.put(one.path(), one.records().findings());
    }
    for (ResolvedPremix premix : premixes) {
      BatchRecordCheck.Looked its = shared.recordCheck().look(premix);
      findings.addAll(its.findings());
      ofRecords.put(premix.declared().file().path(), its.findings());
      looked.add(its);
    }
    looked.add(own.looked());
    Stock stock = shared.recordCheck().close(shared.trees().called(), looked, findings::add);
    StoreCheck.look(shared.tables(), shared.named(), shared.day(), findings::add);
    shared.lineToClean().look(findings::add);
    shared.followedTwice().look(findings::add);
    RecipesTogether.look(shared, recipes, findings);
    findings.addAll(PremixBatches.findings(shared, recipes, faulty(findings), findings));
    List<Finding> inOrder = folded(shared, recipes, ofRecords, findings);
    List<Finding> ofThen = ofThen(shared, own);
    inOrder.addAll(ofThen);
    findings.addAll(ofThen);
    inOrder.sort(FixOrder.ORDER);
    Set<String> reckoned = new TreeSet<>();
    premixes.forEach(one -> reckoned.add(one.code()));
    recipes.stream().filter(Summary::checked).forEach(one -> reckoned.add(one.code()));
    return new Whole(
        Rules.once(inOrder),
        recipes.size(),
        shared.recordCheck().count(reckoned) + own.judged(),
        recipes.stream().mapToInt(Summary::limits).sum(),
        Judged.of(recipes, sisters),
        notChecked(recipes),
        recipes.stream().filter(one -> !one.sound()).map(Summary::code).toList(),
        stock,
        looked.stream().flatMap(one -> one.measured().stream()).toList(),
        faulty(findings),
        recipes.stream().flatMap(one -> one.fault().stream()).toList());
  }

  /** What hangs on how things were, and on no cause of today. */
  private static List<Finding> ofThen(Shared shared, PastRecords.Said own) {
    List<Finding> findings = new ArrayList<>(own.findings());
    WithoutCommit.of(shared).ifPresent(findings::add);
    findings.addAll(ReleasedRecords.of(shared));
    return findings;
  }

  /** What has one cause told once. */
  private static List<Finding> folded(
      Shared shared,
      List<Summary> recipes,
      Map<String, List<Finding>> ofRecords,
      List<Finding> findings) {
    List<Finding> told = Causes.fold(shared, recipes, ofRecords, findings);
    told = UnknownNames.fold(shared, told);
    told = MissingPrices.fold(shared, told);
    told = CapsInDoubt.fold(told);
    told = AlongHelp.told(told);
    return new ArrayList<>(Waiting.told(told, recipes));
  }

  private static Set<String> faulty(List<Finding> findings) {
    Set<String> paths = new HashSet<>();
    for (Finding finding : findings) {
      if (finding.severity() == Severity.ERROR) {
        paths.add(finding.span().file().path());
      }
    }
    return paths;
  }

  /** {@code CG-36, CF-31 (fix salt.yaml first)}. */
  private static List<String> notChecked(List<Summary> recipes) {
    Map<List<String>, List<String>> codes = new LinkedHashMap<>();
    for (Summary one : recipes) {
      if (!one.checked()) {
        codes.computeIfAbsent(one.mendFirst(), none -> new ArrayList<>()).add(one.code());
      }
    }
    List<String> told = new ArrayList<>();
    codes.forEach(
        (broken, of) -> {
          String fix = broken.isEmpty() ? "" : " (fix " + String.join(", ", broken) + " first)";
          told.add(String.join(", ", of) + fix);
        });
    return told;
  }
}
