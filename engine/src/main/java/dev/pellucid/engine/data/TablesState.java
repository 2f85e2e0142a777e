package dev.pellucid.engine.data;

import dev.pellucid.finding.Finding;
import dev.pellucid.text.SourceFile;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;

/**
 * The data files of a folder in one state of their texts, read, and able to read the next state
 * with what this one knows.
 *
 * <p>The route: a text becomes nodes ({@link Nodes}); some files are the frame on which all others
 * count ({@link Frame}); every other file is a thing that follows from its nodes, the frame and the
 * names it may use. What holds between files, such as a name that stands twice, is looked at anew
 * over the things. A text that is the same object keeps its nodes; the same nodes and the same
 * frame keep the thing and the findings about it, as the same objects. The result is that of
 * reading everything afresh, finding for finding.
 */
public final class TablesState {
  private final Nodes nodes;
  private final Frame frame;
  private final Ingredients ingredients;
  private final Lots lots;
  private final Prices prices;
  private final Plants plants;
  private final Labels labels;
  private final PracticeFiles practice;
  private final BatchRecords records;
  private final FeedPlans plans;

  private TablesState(
      Nodes nodes,
      Frame frame,
      Ingredients ingredients,
      Lots lots,
      Prices prices,
      Plants plants,
      Labels labels,
      PracticeFiles practice,
      BatchRecords records,
      FeedPlans plans) {
    this.nodes = nodes;
    this.frame = frame;
    this.ingredients = ingredients;
    this.lots = lots;
    this.prices = prices;
    this.plants = plants;
    this.labels = labels;
    this.practice = practice;
    this.records = records;
    this.plans = plans;
  }

  /** Of a folder without any file. */
  public static TablesState empty() {
    return over(Nodes.NONE, FrameReader.read(Nodes.NONE), Plants.NONE, BatchRecords.NONE);
  }

  /** One that knows nothing yet of what hangs on the frame. */
  private static TablesState over(Nodes nodes, Frame frame, Plants plants, BatchRecords records) {
    return new TablesState(
        nodes,
        frame,
        Ingredients.NONE,
        Lots.NONE,
        Prices.NONE,
        plants,
        Labels.NONE,
        PracticeFiles.NONE,
        records,
        FeedPlans.NONE);
  }

  /**
   * The state after a change.
   *
   * @param texts every YAML file under its path below the folder: {@code ingredients/maize.yaml}; a
   *     text that has not changed is the same object as before
   * @param closed those that have no text that can be had, with their names alone; what is wrong
   *     with them was said elsewhere
   */
  @SuppressWarnings("ReferenceEquality")
  public TablesState next(
      SortedMap<String, SourceFile> texts, SortedMap<String, SourceFile> closed) {
    Nodes now = nodes.next(texts, closed);
    Frame over = frame.next(now);
    return over == frame ? next(now) : over(nodes, over, plants, records).next(now);
  }

  private TablesState next(Nodes now) {
    Ingredients named = ingredients.next(now, frame);
    Lots delivered = lots.next(now, frame, named.names());
    return new TablesState(
        now,
        frame,
        named,
        delivered,
        prices.next(now, frame, named),
        plants.next(now, frame),
        labels.next(now, frame, named),
        practice.next(now, frame, named),
        records.next(now, frame, named.names(), delivered.numbers()),
        plans.next(now, frame, named.names()));
  }

  /** The data of this state and what is wrong with it. */
  public TablesRead stocked() {
    FeedTables tables =
        new FeedTables(
            frame.settings(),
            frame.names().sources().byId(),
            frame.nutrients(),
            frame.groups(),
            ingredients.byName(),
            frame.species(),
            plants.byName(),
            plants.chosen(),
            labels.chosen(),
            practice.practice(),
            prices.byIngredient(),
            prices.whole(),
            prices.ordering(),
            lots.byNumber(),
            lots.bins(),
            records.byNumber(),
            plans.byName());
    return new TablesRead(tables, findings());
  }

  private List<Finding> findings() {
    List<Finding> said = new ArrayList<>();
    for (DataFile file : nodes.files()) {
      said.addAll(Nodes.slips(file));
    }
    said.addAll(nodes.misplaced());
    said.addAll(frame.findings());
    said.addAll(ingredients.findings());
    said.addAll(lots.findings());
    said.addAll(prices.findings());
    said.addAll(plants.findings());
    said.addAll(labels.findings());
    said.addAll(practice.findings());
    said.addAll(records.numbersOf(lots.byNumber()));
    said.addAll(records.findings());
    said.addAll(plans.findings());
    Set<Finding> once = new LinkedHashSet<>(said);
    List<Finding> inOrder = new ArrayList<>(once);
    Collections.sort(inOrder);
    return inOrder;
  }
}
