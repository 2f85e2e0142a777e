package dev.pellucid.engine.trace;

import dev.pellucid.engine.trace.RandomMill.Batch;
import dev.pellucid.engine.trace.RandomMill.Delivery;
import dev.pellucid.engine.trace.RandomMill.Flush;
import dev.pellucid.engine.trace.RandomMill.Line;
import dev.pellucid.engine.trace.RandomMill.Move;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.NullUnmarked;

/**
 * What a recall in a made-up mill must find, by asking each number and each batch for each way
 * between the two, and by going over all of them until nothing more is found.
 */
@NullUnmarked
@SuppressWarnings("ReferenceEquality")
final class PlainSearch {
  /** How one number may have come into one batch. */
  enum Way {
    SURE,
    SURE_BAG,
    MAYBE,
    FLUSH,
    LINE,
    CARRIED
  }

  private final RandomMill mill;
  private final Map<String, Set<Way>> ways = new HashMap<>();
  private Map<Batch, Batch> believed;

  PlainSearch(RandomMill mill) {
    this.mill = mill;
  }

  LocalDate today() {
    return mill.today;
  }

  // What is known of a number.

  Delivery lot(String number) {
    return mill.lots.stream()
        .filter(lot -> lot.number().equalsIgnoreCase(number))
        .findFirst()
        .orElse(null);
  }

  Batch batch(String number) {
    return mill.batches.stream()
        .filter(one -> one.number().equalsIgnoreCase(number))
        .findFirst()
        .orElse(null);
  }

  String kind(String number) {
    String kind = lot(number) == null ? batch(number).code() : lot(number).kind();
    return kind.toLowerCase(Locale.ROOT);
  }

  LocalDate since(String number) {
    return lot(number) == null ? batch(number).day() : lot(number).day();
  }

  boolean inBin(String number, String bin, LocalDate day) {
    Delivery lot = lot(number);
    if (lot == null || !isOneBin(lot.bin(), bin) || lot.day().isAfter(day)) {
      return false;
    }
    for (String name : mill.emptied.keySet()) {
      for (LocalDate empty : mill.emptied.get(name)) {
        if (isOneBin(name, bin) && lot.day().isBefore(empty) && empty.isBefore(day)) {
          return false;
        }
      }
    }
    return true;
  }

  static boolean isOneBin(String one, String other) {
    return one.replaceAll("[ .-]", "").equalsIgnoreCase(other.replaceAll("[ .-]", ""));
  }

  /** All that a line, or a flush, may be of, by what it names and by bins. */
  private Set<String> could(String named, String bin, LocalDate day) {
    Set<String> could = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
    if (!named.isEmpty()) {
      could.add(named);
    }
    for (Delivery one : mill.lots) {
      boolean itsBin = lot(named) != null && !lot(named).bin().isEmpty();
      if ((!bin.isEmpty() && inBin(one.number(), bin, day))
          || (itsBin && inBin(one.number(), lot(named).bin(), day))) {
        could.add(one.number());
      }
    }
    return could;
  }

  Set<String> could(Line line, Batch batch) {
    return could(line.lot(), line.bin(), batch.day());
  }

  boolean isOpen(Line line, Batch batch) {
    if (!line.lot().isEmpty()) {
      return !isRight(line.lot(), line.kind(), batch);
    }
    return !isBinRight(line, batch);
  }

  /** Whether a number can be right: another, of the kind, that was there, and in its bin still. */
  private boolean isRight(String number, String kind, Batch batch) {
    Delivery lot = lot(number);
    boolean gone =
        lot != null && !lot.bin().isEmpty() && !inBin(lot.number(), lot.bin(), batch.day());
    return !number.equalsIgnoreCase(batch.number())
        && kind(number).equals(kind)
        && !since(number).isAfter(batch.day())
        && !gone;
  }

  /** Whether lots of the line could be in its bin, and had enough by all that left them. */
  private boolean isBinRight(Line line, Batch batch) {
    if (line.bin().isEmpty()) {
      return false;
    }
    Set<String> could = could(line, batch);
    double left = 0;
    Set<String> right = right(could, line.kind());
    for (String one : right) {
      double of = left(lot(one), batch.day());
      left += right.size() == 1 ? of : Math.max(0, of);
    }
    if (right.isEmpty()) {
      return false;
    }
    left -= together(right, batch.day());
    if (line.kg().isEmpty()) {
      return left > 1e-6;
    }
    // It is among what left them itself.
    return left >= -1e-6;
  }

  private Set<String> right(Set<String> could, String kind) {
    Set<String> right = new TreeSet<>(could);
    right.removeIf(one -> lot(one) == null || !lot(one).kind().equals(kind));
    return right;
  }

  /** What was drawn of these lots, or of some of them, and of no one of them alone. */
  private double together(Set<String> lots, LocalDate day) {
    double kg = 0;
    for (Batch batch : mill.batches) {
      for (Line line : batch.lines()) {
        double of = line.kg().isEmpty() ? 0 : number(line.kg());
        kg += isOfSome(could(line, batch), line.kind(), lots, batch.day(), day) ? of : 0;
      }
      boolean run = isOfSome(couldRun(batch), batch.flush().with(), lots, batch.day(), day);
      kg += run ? batch.flush().kg() : 0;
    }
    return kg;
  }

  private boolean isOfSome(
      Set<String> could, String kind, Set<String> lots, LocalDate on, LocalDate day) {
    Set<String> right = right(could, kind);
    return could.size() > 1
        && !right.isEmpty()
        && lots.containsAll(right)
        && !on.isAfter(day)
        && right.stream().allMatch(one -> on.isAfter(countedOn(lot(one), day)));
  }

  private static LocalDate countedOn(Delivery lot, LocalDate day) {
    return lot.moves().stream()
        .filter(move -> move.what().equals("counted"))
        .map(Move::day)
        .filter(on -> on.isBefore(day) && !on.isBefore(lot.day()))
        .max(LocalDate::compareTo)
        .orElse(LocalDate.MIN);
  }

  /** All that the flush before a batch may be of; nothing where no lot is named. */
  Set<String> couldRun(Batch batch) {
    return batch.flush().lot().isEmpty() ? Set.of() : could(batch.flush().lot(), "", batch.day());
  }

  private double left(Delivery lot, LocalDate day) {
    double left = lot.kg();
    LocalDate from = countedOn(lot, day);
    for (Move move : lot.moves()) {
      left = move.what().equals("counted") && move.day().equals(from) ? move.loose() : left;
    }
    for (Move move : lot.moves()) {
      boolean counts = move.day().isAfter(from) && !move.day().isAfter(day);
      left -= counts && !move.what().equals("counted") ? move.loose() : 0;
    }
    for (Batch batch : mill.batches) {
      if (batch.day().isAfter(from) && !batch.day().isAfter(day)) {
        for (Line line : batch.lines()) {
          boolean its = isOf(lot, could(line, batch), line.kind(), line.lot());
          left -= its && !line.kg().isEmpty() ? number(line.kg()) : 0;
        }
        Flush flush = batch.flush();
        left -= isOf(lot, couldRun(batch), flush.with(), flush.lot()) ? flush.kg() : 0;
      }
    }
    return left;
  }

  /** Whether what was drawn is counted of one lot: the only one, or named where none is right. */
  private boolean isOf(Delivery lot, Set<String> could, String kind, String named) {
    boolean wrong = right(could, kind).isEmpty() && named.equalsIgnoreCase(lot.number());
    return could.contains(lot.number()) && (could.size() == 1 || wrong);
  }

  /** Lines of a batch that may be of anything of their kind, by their kinds. */
  private List<String> openKinds(Batch batch) {
    List<String> kinds = new ArrayList<>();
    for (Line line : left(batch)) {
      open(line, batch, kinds);
    }
    for (Line line : batch.lines()) {
      if (isOpen(line, batch)) {
        open(line, batch, kinds);
      }
    }
    for (Batch from : flushedInto(batch)) {
      if (isFlushOpen(from, batch)) {
        kinds.add(from.flush().with());
      }
    }
    return kinds;
  }

  /** Lines of the recipe that the record leaves out. */
  List<Line> left(Batch batch) {
    return mill.recipes.get(batch.code()).stream()
        .map(name -> new Line(name, "", "", ""))
        .filter(
            of ->
                batch.lines().stream()
                    .noneMatch(
                        line -> line.kind().equals(of.kind()) && line.isRework() == of.isRework()))
        .toList();
  }

  /** And what a premix of which no batch is told is made of; rework only where none is recorded. */
  private void open(Line line, Batch batch, List<String> kinds) {
    kinds.add(line.kind());
    boolean recorded =
        mill.batches.stream()
            .anyMatch(
                one -> one.code().equalsIgnoreCase(line.kind()) && !one.day().isAfter(batch.day()));
    if (!line.isRework() || !recorded) {
      Set<String> all = new TreeSet<>();
      madeOf(line.kind(), all);
      kinds.addAll(all);
    }
  }

  /**
   * Whether a line of a batch may be of a premix or feed without a record that has a kind in it.
   */
  boolean isInUnrecorded(String kind, Batch batch) {
    List<Line> lines = new ArrayList<>(left(batch));
    batch.lines().stream().filter(line -> isOpen(line, batch)).forEach(lines::add);
    return lines.stream()
        .anyMatch(
            line -> {
              List<String> kinds = new ArrayList<>();
              open(line, batch, kinds);
              return kinds.subList(1, kinds.size()).contains(kind);
            });
  }

  private void madeOf(String kind, Set<String> all) {
    for (String code : mill.recipes.keySet()) {
      for (String name : code.equalsIgnoreCase(kind) ? mill.recipes.get(code) : List.<String>of()) {
        String of = new Line(name, "", "", "").kind();
        if (all.add(of)) {
          madeOf(of, all);
        }
      }
    }
  }

  /** Lines that may be of any lot, since they name nothing that was ever bought or made. */
  Set<String> ofNothing() {
    Set<String> lines = new TreeSet<>();
    for (Batch batch : mill.batches) {
      for (Line line : batch.lines()) {
        if (isOpen(line, batch) && line.kind().startsWith("mael")) {
          lines.add(batch.number() + " " + line.name());
        }
      }
    }
    return lines;
  }

  List<Batch> flushedInto(Batch batch) {
    return mill.batches.stream()
        .filter(one -> one.flush().kg() > 0)
        .filter(one -> one.flush().to().equalsIgnoreCase(batch.number()))
        .toList();
  }

  /** Whether nobody can say of which lot a flush was, as far as it is in a batch. */
  boolean isFlushOpen(Batch from, Batch in) {
    String lot = from.flush().lot();
    return lot.isEmpty() || !isRight(lot, from.flush().with(), in);
  }

  /** kg of fines of one batch that another did not weigh in itself. */
  double fines(Batch from, Batch into) {
    if (!from.finesTo().equalsIgnoreCase(into.number()) || from == into) {
      return 0;
    }
    double weighed = 0;
    for (Line line : into.lines()) {
      if (isOnly(from.number(), line, into)) {
        weighed += line.kg().isEmpty() ? Double.POSITIVE_INFINITY : number(line.kg());
      }
    }
    return Math.max(0, from.fines() - weighed);
  }

  static double number(String kg) {
    return kg.isEmpty() ? Double.NaN : Double.parseDouble(kg);
  }

  boolean isOnly(String number, Line line, Batch batch) {
    Set<String> could = could(line, batch);
    boolean told = !line.lot().isEmpty() || isBinRight(line, batch);
    return told && could.size() == 1 && could.contains(number);
  }

  private boolean mayFollow(String number, Batch batch) {
    Batch before = batch(number);
    if (before == null || before == batch) {
      return false;
    }
    if (batch.after().equals(before.number())) {
      return true;
    }
    return believed(batch) == null
        && !isFollowed(before)
        && believed(before) != batch
        && plants(before).stream().anyMatch(plant -> mayFollow(before, batch, plant));
  }

  private boolean mayFollow(Batch before, Batch batch, String plant) {
    return plants(batch).contains(plant)
        && !before.day().isAfter(batch.day())
        && mill.batches.stream().noneMatch(one -> takesUp(one, before, batch, plant));
  }

  /** That of the recipe, and that of the batch that the record names. */
  private Set<String> plants(Batch batch) {
    Set<String> plants = new TreeSet<>(Set.of(plant(batch)));
    Batch before = batch.after().isEmpty() ? null : batch(batch.after());
    if (before != null) {
      plants.add(plant(before));
    }
    return plants;
  }

  private boolean isFollowed(Batch before) {
    return mill.batches.stream().anyMatch(one -> believed(one) == before && isFeed(one));
  }

  /** The batch that a record tells to have come before, where it is believed. */
  private Batch believed(Batch batch) {
    if (believed == null) {
      believe();
    }
    return believed.get(batch);
  }

  private void believe() {
    believed = new HashMap<>();
    for (Batch batch : mill.batches) {
      Batch before = batch.after().isEmpty() ? null : batch(batch.after());
      boolean can =
          before != null
              && before != batch
              && batch.isMade() == before.isMade()
              && (batch.isMade() || !before.day().isBefore(mill.today))
              && !before.day().isAfter(batch.day())
              && plant(before).equals(plant(batch));
      if (can) {
        believed.put(batch, before);
      }
    }
    Map<Batch, Batch> all = new HashMap<>(believed);
    for (Batch one : all.keySet()) {
      for (Batch other : all.keySet()) {
        if (one != other && isFeed(one) && isFeed(other) && all.get(one) == all.get(other)) {
          believed.remove(one);
        }
      }
    }
    Map<Batch, Batch> left = new HashMap<>(believed);
    for (Batch one : left.keySet()) {
      Batch at = left.get(one);
      for (int i = 0; i <= left.size() && at != null; i++) {
        if (at == one) {
          believed.remove(one);
        }
        at = left.get(at);
      }
    }
    for (int i = 0; i <= mill.batches.size(); i++) {
      List<Batch> doubted =
          believed.keySet().stream().filter(one -> passesOver(believed.get(one), one)).toList();
      doubted.forEach(believed::remove);
    }
  }

  private boolean passesOver(Batch before, Batch batch) {
    return mill.batches.stream()
        .filter(one -> one.isMade() && isFeed(one) && plants(one).contains(plant(batch)))
        .filter(one -> one.day().isAfter(before.day()) && one.day().isBefore(batch.day()))
        .anyMatch(one -> !isFollowed(one));
  }

  private boolean isFeed(Batch batch) {
    return !mill.premixes.contains(batch.code());
  }

  /** Whether a batch was made between two others and took up what the first left behind. */
  private boolean takesUp(Batch one, Batch before, Batch batch, String plant) {
    boolean inItsTurn = one.isMade() || !one.day().isBefore(mill.today);
    return plants(one).contains(plant)
        && one.day().isAfter(before.day())
        && one.day().isBefore(batch.day())
        && isFeed(one)
        && inItsTurn
        && believed(one) == null;
  }

  private String plant(Batch batch) {
    return mill.plants.get(batch.code());
  }

  // From one number into one batch.

  Set<Way> ways(String number, Batch batch) {
    return ways.computeIfAbsent(number + ">" + batch.number(), none -> search(number, batch));
  }

  private Set<Way> search(String number, Batch batch) {
    Set<Way> found = new TreeSet<>();
    for (Line line : batch.lines()) {
      if (could(line, batch).contains(number)) {
        found.add(isOnly(number, line, batch) ? Way.SURE : Way.MAYBE);
      }
    }
    boolean there = !since(number).isAfter(batch.day());
    boolean itself = batch(number) == batch;
    if (!itself && there && openKinds(batch).contains(kind(number))) {
      found.add(Way.MAYBE);
    }
    if (batch(number) != null && fines(batch(number), batch) > 1e-9) {
      found.add(Way.SURE);
    }
    if (batch.bags().begunWith().equals(number)) {
      found.add(Way.SURE_BAG);
    }
    for (Batch from : flushedInto(batch)) {
      Set<String> could = could(from.flush().lot(), "", from.day());
      if (could.contains(number)) {
        found.add(could.size() == 1 ? Way.SURE : Way.MAYBE);
      }
      if (mayFollow(number, from)) {
        found.add(Way.CARRIED);
      }
    }
    if (batch.flush().kg() > 0) {
      String lot = batch.flush().lot();
      boolean of =
          (isFlushOpen(batch, batch)
                  && !itself
                  && there
                  && kind(number).equals(batch.flush().with()))
              || (!lot.isEmpty() && could(lot, "", batch.day()).contains(number));
      if (of) {
        found.add(Way.FLUSH);
      }
    }
    if (mayFollow(number, batch)) {
      found.add(Way.LINE);
    }
    return found;
  }

  // Through all of them.

  /**
   * A number in a batch: in its mix or its bags alone, by no line (0), a flush (1) or a line (2).
   */
  record State(String number, boolean mix, int line) {}

  /** The batches that surely hold a number; those that hold it in their mix, if asked so. */
  Set<String> sure(String subject, boolean mixOnly) {
    Set<String> mix = new TreeSet<>();
    Set<String> bags = new TreeSet<>();
    int before = -1;
    while (mix.size() + bags.size() > before) {
      before = mix.size() + bags.size();
      for (Batch batch : mill.batches) {
        Set<String> from = new TreeSet<>(mix);
        from.add(subject);
        for (String one : from) {
          if (ways(one, batch).contains(Way.SURE)) {
            mix.add(batch.number());
          }
          if (ways(one, batch).contains(Way.SURE_BAG)) {
            bags.add(batch.number());
          }
        }
      }
    }
    if (!mixOnly) {
      mix.addAll(bags);
    }
    return mix;
  }

  /** Every state in which a number may be in a batch. */
  Set<State> states(String subject) {
    List<State> next = new ArrayList<>(List.of(new State(subject, true, 0)));
    Set<State> found = new java.util.HashSet<>(next);
    while (!next.isEmpty()) {
      State from = next.remove(next.size() - 1);
      for (Batch batch : mill.batches) {
        for (Way way : ways(from.number(), batch)) {
          State to = step(from, way, batch.number());
          if (to != null && found.add(to)) {
            next.add(to);
          }
        }
      }
    }
    return found;
  }

  private static State step(State from, Way way, String to) {
    boolean leaves = from.mix() && from.line() == 0;
    return switch (way) {
      case SURE, MAYBE -> new State(to, true, from.line());
      case SURE_BAG -> new State(to, false, from.line());
      case FLUSH, CARRIED -> leaves ? new State(to, true, 1) : null;
      case LINE -> leaves ? new State(to, true, 2) : null;
    };
  }

  Set<String> may(String subject, boolean onLine) {
    Set<String> nearer = new TreeSet<>();
    Set<String> all = new TreeSet<>();
    for (State state : states(subject)) {
      all.add(state.number());
      if (state.line() < 2) {
        nearer.add(state.number());
      }
    }
    if (onLine) {
      all.removeAll(nearer);
    } else {
      all = nearer;
    }
    all.removeAll(sure(subject, false));
    all.remove(subject);
    return all;
  }

  // Kilograms.

  private boolean leads(String from, String to) {
    Set<String> seen = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
    List<String> next = new ArrayList<>(List.of(from));
    while (!next.isEmpty()) {
      String one = next.remove(0);
      for (Batch batch : mill.batches) {
        Set<Way> ways = ways(one, batch);
        if ((ways.contains(Way.SURE) || ways.contains(Way.SURE_BAG)) && seen.add(batch.number())) {
          next.add(batch.number());
        }
      }
    }
    return seen.contains(to);
  }

  /** kg that surely came into the mix of a batch; not a number where no record tells. */
  double mix(String subject, Batch in) {
    double kg = 0;
    for (Line line : in.lines()) {
      Set<String> could = could(line, in);
      if (could.size() == 1 && isOnly(could.iterator().next(), line, in)) {
        kg += through(subject, could.iterator().next(), number(line.kg()), in);
      }
    }
    for (Batch from : mill.batches) {
      if (fines(from, in) > 1e-9) {
        kg += through(subject, from.number(), fines(from, in), in);
      }
    }
    for (Batch from : flushedInto(in)) {
      Set<String> could = could(from.flush().lot(), "", from.day());
      if (could.size() == 1) {
        kg += through(subject, could.iterator().next(), from.flush().kg(), in);
      }
    }
    return kg;
  }

  private double through(String subject, String taken, double kg, Batch into) {
    if (taken.equalsIgnoreCase(subject)) {
      return kg;
    }
    Batch from = batch(taken);
    if (from == null || !sure(subject, true).contains(from.number())) {
      return 0;
    }
    return leads(into.number(), from.number()) ? Double.NaN : mix(subject, from) * kg / made(from);
  }

  double all(String subject, Batch in) {
    String begun = in.bags().begunWith();
    double part = begun.isEmpty() ? 0 : through(subject, begun, in.bags().begunKg(), in);
    return mix(subject, in) + part;
  }

  double made(Batch batch) {
    if (!batch.isMade()) {
      return batch.size();
    }
    if (batch.bags().of() > 0) {
      double own = batch.bags().kg() - batch.bags().begunKg() + batch.fines();
      return own > 0 ? own : Double.NaN;
    }
    double kg = 0;
    kg += left(batch).isEmpty() ? 0 : Double.NaN;
    for (Line line : batch.lines()) {
      kg += number(line.kg());
    }
    for (Batch from : mill.batches) {
      kg += fines(from, batch);
    }
    for (Batch from : flushedInto(batch)) {
      kg += from.flush().kg();
    }
    return kg;
  }
}
