package dev.pellucid.engine.data;

import dev.pellucid.finding.Finding;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * {@code practice/sequence.yaml} as it was read.
 *
 * @param file none where the folder has no such file
 * @param holdable names of groups and of ingredients
 * @param flushable names of ingredients
 * @param asked the ingredients that it asked for and what it was given, absent ones too
 */
record SequenceFile(
    List<DataFile> file,
    Known holdable,
    Known flushable,
    Map<String, Optional<Ingredient>> asked,
    Read<List<SequenceRow>> read) {

  /** Of a folder without such a file. */
  static final SequenceFile NONE =
      new SequenceFile(
          List.of(),
          holdable(Set.of(), true),
          Ingredients.names(Set.of()),
          Map.of(),
          new Read<>(List.of(), List.of(), true));

  /** The same object where neither the file is new nor what it names. */
  SequenceFile next(Nodes nodes, Frame frame, Ingredients ingredients) {
    List<DataFile> now = nodes.files(SequenceReader.FILE);
    Known holds = holdable(frame, ingredients);
    boolean same =
        Nodes.areSame(file, now)
            && (now.isEmpty()
                || (holds.isLike(holdable)
                    && ingredients.names().isLike(flushable)
                    && isAnsweredBy(ingredients.byName())));
    return same ? this : read(now, frame, ingredients, holds);
  }

  private static SequenceFile read(
      List<DataFile> file, Frame frame, Ingredients ingredients, Known holdable) {
    Map<String, Optional<Ingredient>> asked = new TreeMap<>();
    Remarks remarks = new Remarks();
    SequenceReader reader =
        new SequenceReader(
            frame,
            name ->
                asked.computeIfAbsent(
                    name, one -> Optional.ofNullable(ingredients.byName().get(one))),
            holdable,
            ingredients.names(),
            remarks);
    List<SequenceRow> rows =
        reader.read(file.isEmpty() ? Optional.empty() : Optional.of(file.get(0)));
    return new SequenceFile(
        file,
        holdable,
        ingredients.names(),
        Collections.unmodifiableMap(asked),
        new Read<>(rows, remarks.findings(), remarks.isSound()));
  }

  @SuppressWarnings("ReferenceEquality")
  private boolean isAnsweredBy(Map<String, Ingredient> ingredients) {
    for (Map.Entry<String, Optional<Ingredient>> each : asked.entrySet()) {
      if (each.getValue().orElse(null) != ingredients.get(each.getKey())) {
        return false;
      }
    }
    return true;
  }

  /** The groups and ingredients of a folder. */
  static Known holdable(Frame frame, Ingredients ingredients) {
    Set<String> names = new LinkedHashSet<>(frame.groups().keySet());
    names.addAll(ingredients.byName().keySet());
    return holdable(names, frame.names().groups().whole());
  }

  private static Known holdable(Set<String> names, boolean whole) {
    return new Known(
        ReferenceFindings.INGREDIENT,
        "a group or an ingredient",
        "groups.yaml or ingredients/",
        names,
        whole);
  }

  List<SequenceRow> rows() {
    return read.thing();
  }

  List<Finding> findings() {
    return read.findings();
  }
}
