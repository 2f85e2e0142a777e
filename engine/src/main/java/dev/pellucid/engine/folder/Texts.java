package dev.pellucid.engine.folder;

import dev.pellucid.finding.Finding;
import dev.pellucid.parse.SourceBytes;
import dev.pellucid.text.BundledPath;
import dev.pellucid.text.SourceFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiPredicate;

/**
 * The texts of a folder in one state, by their paths below it, in one order on every system. It is
 * a value: what is changed is another. The text of a file on a disk is read when it is asked for
 * and kept nowhere, so that memory holds what is in flight and not the folder; a text that is in
 * memory is the same object each time.
 *
 * <p>Links are not followed, {@code target} and folders with a leading dot are passed over. What is
 * wrong with a file itself, its name, its length, its bytes, is a finding, and so is a file that is
 * not read for a slip in its name. Paths in texts and findings are below the folder; what stands
 * before them where they are printed is for the printer to say.
 */
public final class Texts {
  /** The longest file that is read, in bytes: 1 MiB. */
  static final long LONGEST = 1 << 20;

  /** What makes a folder one of feeds. */
  public static final String SETTINGS = "pellucid.yaml";

  private final SortedMap<String, Stored> files;
  private final List<Passed> passed;
  private final List<Finding> clashes;
  private final List<Replaced> replaced;
  private final Past past;

  Texts(SortedMap<String, Stored> files, List<Passed> passed) {
    this(files, passed, List.of(), Past.NONE);
  }

  private Texts(
      SortedMap<String, Stored> files, List<Passed> passed, List<Replaced> replaced, Past past) {
    this.past = past;
    this.replaced = List.copyOf(replaced);
    this.files = Collections.unmodifiableSortedMap(new TreeMap<>(files));
    this.passed = List.copyOf(passed);
    this.clashes = clashes(this.files.keySet());
  }

  /**
   * Those of a folder on a disk.
   *
   * @throws IOException where the folder itself cannot be opened
   */
  public static Texts at(Path root) throws IOException {
    return DiskListing.of(root);
  }

  /**
   * Those of a tar archive, as if it were unpacked, in memory; what would not be read of a folder
   * is not kept.
   *
   * @throws IOException where the archive is not whole
   */
  public static Texts packed(InputStream tar) throws IOException {
    return TarListing.of(tar);
  }

  /** Those of a commit, each file of which is in memory. */
  public static Texts committed(Collection<Committed> files) {
    Listing listing = new Listing();
    files.forEach(file -> file.into(listing));
    return listing.texts();
  }

  /** These, of a folder whose earlier commits are known. */
  public Texts knowing(Past earlier) {
    return new Texts(files, passed, replaced, earlier);
  }

  /** How the folder was before. */
  public Past past() {
    return past;
  }

  /** These with some files as another state has them: without those that it does not have. */
  public Texts with(Collection<String> paths, Texts other) {
    Listing listing = new Listing(files, passed);
    for (String path : paths) {
      listing.forget(path);
      listing.take(path, Optional.ofNullable(other.files.get(path)), other.passed);
    }
    return listing.texts().knowing(past);
  }

  /**
   * These with the texts of an editor in place of what is saved, each as it would be if it were
   * saved now: one that is not there yet is added, and one whose name or place would not be read is
   * not read here either.
   *
   * @param buffers the text of each by its path below the folder
   */
  public Texts over(Map<String, String> buffers) {
    Listing listing = new Listing(files, passed);
    buffers.forEach(
        (path, text) -> {
          Stored.InMemory buffer = Stored.InMemory.of(text);
          boolean same = files.get(path) instanceof Stored.InMemory held && held.isLike(buffer);
          if (!same && Names.isReached(path)) {
            listing.forget(path);
            listing.file(path, buffer);
          }
        });
    return listing.texts().knowing(past);
  }

  /**
   * These with the data that come with this program under them, each text the same object each
   * time. Of a file that the folder has itself, by its kind and its name, the folder's counts.
   */
  public Texts over(Bundled bundled) {
    Map<String, String> own = new HashMap<>();
    files.keySet().forEach(path -> own.put(Names.ofThing(path), path));
    SortedMap<String, Stored> all = new TreeMap<>(files);
    List<Replaced> instead = new ArrayList<>();
    for (Map.Entry<String, Stored.InMemory> file : bundled.files().entrySet()) {
      String place = BundledPath.below(file.getKey());
      String path = own.get(Names.ofThing(place));
      if (path == null || Names.isAddedTo(place)) {
        all.put(file.getKey(), file.getValue());
      } else {
        instead.add(new Replaced(path, bundled.source(place)));
      }
    }
    return new Texts(all, passed, instead, past);
  }

  /** These without some files, whether they are there or not. */
  public Texts without(Collection<String> paths) {
    Listing listing = new Listing(files, passed);
    paths.forEach(listing::forget);
    return listing.texts().knowing(past);
  }

  /**
   * These, with every text in memory from now on, so that each is the same object each time. What
   * cannot be read stays as it is, to be told when it is asked for.
   */
  public Texts held() {
    SortedMap<String, Stored> held = new TreeMap<>();
    files.forEach((path, file) -> held.put(path, file.held()));
    return new Texts(held, passed).knowing(past);
  }

  /**
   * These, both states in memory, with the very text of another state wherever a file has the same
   * bytes there.
   */
  public Texts sharing(Texts other) {
    SortedMap<String, Stored> shared = new TreeMap<>(files);
    for (Map.Entry<String, Stored> file : shared.entrySet()) {
      if (file.getValue() instanceof Stored.InMemory own
          && other.files.get(file.getKey()) instanceof Stored.InMemory there
          && there.isLike(own)) {
        file.setValue(there);
      }
    }
    return new Texts(shared, passed).knowing(past);
  }

  /** Whether there is a file of that name right in a folder on a disk. */
  public static boolean holds(Path root, String name) {
    return Files.isRegularFile(root.resolve(name));
  }

  /** What was wrong with names and links. */
  public List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    for (Passed one : passed) {
      if (one.why() != Passed.Why.RECORD || !one.isSpare(files.keySet())) {
        findings.add(one.finding());
      }
    }
    findings.addAll(clashes);
    Collections.sort(findings);
    return findings;
  }

  /**
   * What was found and not read though it could be meant to be, in the order of paths: whoever must
   * have seen every file asks for it. A copy is not among them where the file that it is a copy of
   * is there, nor a photo of a batch that has its record.
   */
  public List<Passed> passedOver() {
    return passed.stream()
        .filter(one -> !one.isSpare(files.keySet()))
        .sorted(Comparator.comparing(Passed::path))
        .toList();
  }

  /** Paths of every file that is read, in order. */
  public List<String> paths() {
    return List.copyOf(files.keySet());
  }

  /** Whether a path is that of a file that is read. */
  public boolean has(String path) {
    return files.containsKey(path);
  }

  /** Whether there is a file at a place, in the folder or among those that come along. */
  public boolean tells(String place) {
    return has(place) || has(BundledPath.of(place));
  }

  /** The places of the files that come along, those that count. */
  public List<String> comingAlong() {
    return files.keySet().stream().filter(BundledPath::is).map(BundledPath::below).toList();
  }

  /**
   * A file of the folder that stands in place of one that would come along.
   *
   * @param own its path
   * @param bundled what it takes the place of
   */
  public record Replaced(String own, SourceFile bundled) {}

  /** The files of the folder that stand in place of others, in the order of those. */
  public List<Replaced> replaced() {
    return replaced;
  }

  /** Whether a link to another place was found there and passed over. */
  public boolean isLink(String path) {
    return passed.stream().anyMatch(one -> one.is(path, Passed.Why.LINK));
  }

  /** Paths that end so, in order. */
  public List<String> ending(String extension) {
    List<String> ending = new ArrayList<>();
    for (String path : files.keySet()) {
      if (path.endsWith(extension)) {
        ending.add(path);
      }
    }
    return Collections.unmodifiableList(ending);
  }

  /** Paths of every YAML file, in order; whether its place means something is for others to say. */
  public List<String> data() {
    List<String> data = new ArrayList<>();
    for (String path : files.keySet()) {
      if (path.endsWith(".yaml") || path.endsWith(".yml")) {
        data.add(path);
      }
    }
    return Collections.unmodifiableList(data);
  }

  /**
   * What a file is called for its content: the SHA-256 of its bytes, with line ends as {@code \n}.
   *
   * @return empty where it cannot be read
   */
  public Optional<String> digest(String path) {
    Stored file = files.get(path);
    try {
      return file == null || file.size() > LONGEST ? Optional.empty() : Optional.of(file.digest());
    } catch (IOException closed) {
      return Optional.empty();
    }
  }

  /** The text of a file; a finding where it cannot be read. */
  public Optional<SourceFile> read(String path, List<Finding> found) {
    Stored file = files.get(path);
    if (file == null) {
      throw new IllegalArgumentException("not a file of this folder: " + path);
    }
    try {
      long bytes = file.size();
      if (bytes > LONGEST) {
        found.add(FolderFindings.tooLong(path, bytes));
        return Optional.empty();
      }
      SourceBytes.Decoded decoded = file.decoded(path);
      found.addAll(decoded.findings());
      return decoded.isUnreadable() ? Optional.empty() : Optional.of(decoded.source());
    } catch (IOException closed) {
      found.add(FolderFindings.unreadable(path));
      return Optional.empty();
    }
  }

  /**
   * Recipes, premixes, profiles and data files that are not exactly as they were kept elsewhere:
   * other ones, new ones and missing ones.
   *
   * @param kept what each is called for its content, by its path below the folder
   * @param bears whether a content is called so
   * @return their paths
   * @throws IOException where one cannot be read
   */
  public SortedSet<String> differing(Map<String, String> kept, BiPredicate<byte[], String> bears)
      throws IOException {
    Map<String, String> left = new TreeMap<>();
    kept.forEach((path, name) -> left.put(Names.composed(path), name));
    left.keySet().removeIf(path -> !(Names.isMeant(path) && Names.isReached(path)));
    SortedSet<String> other = new TreeSet<>();
    for (Map.Entry<String, Stored> file : files.entrySet()) {
      if (Names.isMeant(file.getKey())) {
        Stored stored = file.getValue();
        String name = left.remove(Names.composed(file.getKey()));
        // What is too long to be read is no part of a feed, so it need not be read here.
        if (name == null || stored.size() > LONGEST || !bears.test(stored.bytes(), name)) {
          other.add(file.getKey());
        }
      }
    }
    other.addAll(left.keySet());
    return other;
  }

  private static List<Finding> clashes(Collection<String> paths) {
    List<Finding> clashes = new ArrayList<>();
    Map<String, String> byLetters = new HashMap<>();
    Map<String, String> byName = new HashMap<>();
    for (String path : paths) {
      if (Names.isCalled(path)) {
        String other = byName.putIfAbsent(Names.ofFile(path), path);
        if (other != null) {
          clashes.add(FolderFindings.twice(path, other));
        }
      }
      String earlier = byLetters.putIfAbsent(path.toLowerCase(Locale.ROOT), path);
      if (earlier != null) {
        clashes.add(FolderFindings.clash(path, earlier));
      }
    }
    return List.copyOf(clashes);
  }
}
