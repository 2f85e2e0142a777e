package dev.pellucid.engine.goal;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.TablesReader;
import dev.pellucid.engine.folder.Passed;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.records.BatchTarget;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.trace.Trace;
import dev.pellucid.engine.trace.Tracer;
import dev.pellucid.engine.workspace.PlantOfCode;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Streamed;
import dev.pellucid.engine.workspace.Trees;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.Meant;
import dev.pellucid.text.NearNames;
import dev.pellucid.text.Plural;
import dev.pellucid.text.PrintedPaths;
import dev.pellucid.text.RecordName;
import dev.pellucid.text.SourceFile;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Lots and records of a folder, ready to be traced, and all of them that could not be searched:
 * they are read, then the lines of the recipes of those records. A recipe is reckoned only where a
 * batch of it is still planned, so that a slip anywhere else in the folder does not stand in the
 * way of a recall.
 */
final class SearchedStore {
  private static final String BATCHES = "batches/";
  private static final String LOTS = "lots/";
  private static final String CLOSED = "cannot be read";

  private final Texts folder;
  private final FeedTables tables;
  private final Set<String> premixes;
  private final List<Finding> findings = new ArrayList<>();
  private final List<Unsearched> unsearched = new ArrayList<>();
  private final Tracer tracer;
  private final Supplier<Shared> recipes;

  /**
   * @param today a batch that is planned for an earlier day may have been made, or not
   */
  SearchedStore(Texts folder, LocalDate today) {
    this.folder = folder;
    ReadFolder read = ReadFolder.of(folder);
    this.tables = read.tables();
    this.premixes = read.trees().premixPaths().keySet();
    this.recipes = new Once<>(() -> Shared.of(read, Days.AS_WRITTEN));
    passedOver();
    notRead(read.findings().stream().sorted().toList());
    Set<String> codes = new TreeSet<>();
    tables.batches().values().forEach(record -> codes.add(record.code()));
    BatchLines lines = new BatchLines(read.trees(), codes);
    PlantOfCode plants = new PlantOfCode(read.trees(), tables);
    RecipesThen made = new RecipesThen(folder, tables, lines, plants);
    unsearched.addAll(made.unread());
    this.tracer = new Tracer(tables, made, made, this::order, today);
    unsearched.addAll(lines.unread());
    ofNothing(read.trees());
  }

  /** Names each line that is of nothing that the folder has. */
  private void ofNothing(Trees trees) {
    Set<String> codes = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
    codes.addAll(premixes);
    codes.addAll(trees.recipes());
    Set<Unsearched> lines = new LinkedHashSet<>();
    for (Trace.Unknown one : tracer.ofNothing(codes::contains)) {
      BatchRecord record = Objects.requireNonNull(tables.batches().get(one.batch()));
      lines.add(new Unsearched.Line(record.declared().file().path(), one.line()));
    }
    unsearched.addAll(lines);
  }

  /** Makes a thing when it is first asked for. */
  private static final class Once<T> implements Supplier<T> {
    private final Supplier<T> maker;
    private Optional<T> made = Optional.empty();

    Once(Supplier<T> maker) {
      this.maker = maker;
    }

    @Override
    public T get() {
      T thing = made.orElseGet(maker);
      made = Optional.of(thing);
      return thing;
    }
  }

  FeedTables tables() {
    return tables;
  }

  Tracer tracer() {
    return tracer;
  }

  /** The codes of premixes. */
  Set<String> premixes() {
    return premixes;
  }

  /** What is wrong with lots and records. */
  List<Finding> findings() {
    return findings;
  }

  /** What could not be searched, each with why. */
  List<String> unsearched(PrintedPaths paths) {
    return unsearched.stream().map(one -> one.sentence(paths)).toList();
  }

  /** Why nothing can be told of a number; empty where it is known. */
  Optional<String> unknown(String number) {
    if (tracer.knows(number)) {
      return Optional.empty();
    }
    if (isTorn(number)) {
      return Optional.of(torn(number));
    }
    if (unsearched.stream().anyMatch(one -> one.isRecordOf(number))) {
      return Optional.of("the record of " + number + " is in no place where records are read");
    }
    String none = "no lot or batch of this folder has the number " + number;
    return Optional.of(
        OtherNumbers.sentence(tables, tracer.numbers(), number)
            .or(() -> Meant.question(NearNames.of(number, tracer.numbers())))
            .map(more -> none + "; " + more)
            .orElse(none));
  }

  /** Why a number that is known is not that of a batch; empty where it is. */
  Optional<String> noBatch(String number) {
    if (tracer.isBatch(number)) {
      return Optional.empty();
    }
    return Optional.of(
        isTorn(number)
            ? torn(number)
            : number + " is a lot and no batch; -Dpellucid.lot=" + number + " tells where it went");
  }

  /** Whether there is a file of such a record, though none that can be read. */
  boolean isTorn(String number) {
    return !tracer.isBatch(number) && paths(BATCHES).stream().anyMatch(path -> isOf(path, number));
  }

  private static String torn(String number) {
    return "the record of " + number + " cannot be read: fix it first";
  }

  private static boolean isOf(String path, String number) {
    return new SourceFile(path, "").stem().equalsIgnoreCase(number);
  }

  /** {@code 3 batch records and 7 lots of 1 file}. */
  String searched() {
    return Plural.of(tables.batches().size(), "batch record")
        + " of "
        + BATCHES
        + " and "
        + Plural.of(tables.lots().size(), "lot")
        + " of "
        + LOTS;
  }

  /** Names what was not opened and could be, or could hold, a file of lots or records. */
  private void passedOver() {
    for (Passed passed : folder.passedOver()) {
      if (passed.path().isEmpty() || isInStore(passed.path()) || passed.mayBeOfStore()) {
        findings.add(passed.finding());
        unsearched.add(new Unsearched.File(passed.path(), passed.why().words()));
      }
    }
  }

  /**
   * An error in lots and records, or a word that a file of them is in no place where it is read.
   */
  private boolean isOfStore(Finding finding) {
    String path = finding.span().file().path();
    boolean misplaced =
        folder.has(path)
            && !(path.endsWith(".yaml") && Stream.of(BATCHES, LOTS).anyMatch(path::startsWith));
    boolean error = finding.severity() == Severity.ERROR;
    return isInStore(path) ? error || misplaced : error && isRecord(path);
  }

  /** Whether people take a path for one of lots or records, whatever its capitals and signs. */
  private static boolean isInStore(String path) {
    String letters = path.replaceAll("[^\\p{Alnum}/]", "").toLowerCase(Locale.ROOT) + "/";
    return Stream.of(BATCHES, LOTS).anyMatch(letters::startsWith);
  }

  private List<String> paths(String place) {
    return folder.data().stream().filter(path -> path.startsWith(place)).toList();
  }

  private Set<String> read() {
    return tables.batches().values().stream()
        .map(record -> record.declared().file().path())
        .collect(Collectors.toSet());
  }

  /** Names every other file of lots and records that was not read, or not in full. */
  private void notRead(List<Finding> found) {
    Set<String> read = read();
    Set<String> told = new HashSet<>();
    findings.forEach(finding -> told.add(finding.span().file().path()));
    Set<Finding> passed = new HashSet<>(findings);
    for (Finding finding : found) {
      String path = finding.span().file().path();
      if (isOfStore(finding) && !passed.contains(finding)) {
        boolean inPart =
            read.contains(path) || (path.startsWith(LOTS) && finding.severity() == Severity.ERROR);
        findings.add(finding);
        if (told.add(path)) {
          String why = inPart ? "has an error" : isInStore(path) ? CLOSED : astray(path);
          unsearched.add(new Unsearched.File(path, why));
        }
      } else if (TablesReader.isMisplaced(finding) && told.add(path)) {
        findings.add(finding);
        unsearched.add(new Unsearched.File(path, astray(path)));
      }
    }
    for (String path : paths(BATCHES)) {
      if (!read.contains(path) && told.add(path)) {
        unsearched.add(new Unsearched.File(path, CLOSED));
      }
    }
  }

  private static String astray(String path) {
    return isRecord(path)
        ? "looks like a batch record and lies in no place where records are read: move it to "
            + BATCHES
        : "is in no place where data is read, and may be a record or a file of lots";
  }

  private static boolean isRecord(String path) {
    return RecordName.of(path.substring(path.lastIndexOf('/') + 1)).isPresent();
  }

  private Optional<BatchTarget> order(BatchRecord record) {
    Shared shared = recipes.get();
    return Optional.ofNullable(shared.resolver().premixes().get(record.code()))
        .map(premix -> BatchTarget.of(premix, record.kg()))
        .or(
            () ->
                feed(shared, record.code()).map(feed -> shared.recordCheck().target(feed, record)));
  }

  private static Optional<ComputedFeed> feed(Shared shared, String code) {
    return shared.trees().path(code).flatMap(path -> Streamed.judged(shared, path).feed());
  }
}
