package dev.pellucid.engine.workspace;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A folder that is kept and edited step by step says what one that is read afresh says, to the last
 * letter of every finding and the last bit of every figure.
 */
class KeptTest {
  private static final int EACH_BUILD = 60;
  private static final int STEPS = 5;

  @TempDir Path empty;
  private SortedMap<String, String> base = new TreeMap<>();

  @BeforeEach
  void folder() throws IOException {
    base = EditedFolder.texts();
  }

  static Stream<Integer> seeds() {
    int many = Integer.getInteger("pellucid.sequences", EACH_BUILD);
    return IntStream.range(0, many).boxed();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void keptIsAsFresh(int seed) throws IOException {
    Editor editor = new Editor(seed, base);
    List<Edit> edits = new ArrayList<>();
    SortedMap<String, String> folder = base;
    for (int i = 0; i < STEPS; i++) {
      Edit edit = editor.next(folder);
      edits.add(edit);
      folder = edit.on(folder);
    }
    Optional<String> difference = said().difference(base, edits);
    if (difference.isPresent()) {
      List<Edit> few = shrunk(edits);
      throw new AssertionError(few + "\n" + said().difference(base, few).orElse(""));
    }
  }

  private Said said() {
    return new Said(empty);
  }

  /** The fewest edits of these that still show a difference. */
  private List<Edit> shrunk(List<Edit> edits) throws IOException {
    for (int i = 0; i < edits.size(); i++) {
      List<Edit> fewer = new ArrayList<>(edits);
      fewer.remove(i);
      if (said().difference(base, fewer).isPresent()) {
        return shrunk(fewer);
      }
    }
    return edits;
  }
}
