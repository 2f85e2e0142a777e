package dev.pellucid.engine.goal;

import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.form.BatchForm;
import dev.pellucid.engine.form.Form;
import dev.pellucid.engine.plan.BatchPlan;
import dev.pellucid.engine.plan.FromStore.Taken;
import dev.pellucid.engine.plan.Weighed;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.text.ToBeGiven;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** The record of a batch that is planned, with the lots that its sheet would name. */
final class NewBatch {
  private final Texts texts;
  private final Shared shared;
  private final LocalDate day;

  NewBatch(Texts texts, Shared shared, LocalDate day) {
    this.texts = texts;
    this.shared = shared;
    this.day = day;
  }

  /** One of a recipe or premix. */
  NewReport of(String code) {
    TreeSet<String> codes = new TreeSet<>(shared.trees().recipes());
    codes.addAll(shared.trees().premixPaths().keySet());
    if (!codes.contains(code)) {
      return NewGoal.unknown(code, "recipe", "-Dpellucid.batch", codes);
    }
    Optional<BatchPlan> plan = SheetsGoal.planned(texts, day, code);
    return plan.map(this::planned)
        .orElseGet(
            () ->
                NewReport.refused(
                    code
                        + " has no sheet, and so no batch of it can be planned; run mvn"
                        + " pellucid:check and fix what it says of it first"));
  }

  private NewReport planned(BatchPlan plan) {
    Map<String, List<String>> lots = new LinkedHashMap<>();
    List<String> without = new ArrayList<>();
    for (Weighed line : plan.weighing()) {
      List<String> chosen =
          plan.fromStore().lots().getOrDefault(line.name(), List.of()).stream()
              .map(NewBatch::words)
              .toList();
      if (chosen.isEmpty()) {
        without.add(line.name());
      } else {
        lots.put(line.name(), chosen);
      }
    }
    return NewReport.of(
        new Form(
            "batches/" + number(plan.code()) + ".yaml", BatchForm.text(size(plan), lots, without)),
        "mvn pellucid:batch-sheet makes its sheet, and says what is to be bought for it");
  }

  private static String words(Taken taken) {
    if (taken.isMixed()) {
      return "bin: " + taken.bin();
    }
    return "lot: " + taken.number() + (taken.bin().isEmpty() ? "" : ", bin: " + taken.bin());
  }

  /** The first that no record, and no file, bears. */
  private String number(String code) {
    int serial = 1;
    while (isTaken(code + "-" + day + "-" + serial)) {
      serial++;
    }
    return code + "-" + day + "-" + serial;
  }

  private boolean isTaken(String number) {
    return shared.tables().batches().containsKey(number)
        || texts.has("batches/" + number + ".yaml")
        || texts.has("batches/" + number + ".yml");
  }

  private static String size(BatchPlan plan) {
    if (!plan.sizeTold()) {
      return ToBeGiven.MARK + " kg";
    }
    double kg = BatchPlan.sum(plan.weighing()).target().asDouble();
    BigDecimal size = BigDecimal.valueOf(kg).setScale(3, RoundingMode.HALF_UP);
    return size.stripTrailingZeros().toPlainString() + " kg";
  }
}
