package dev.pellucid.engine.goal;

import dev.pellucid.engine.folder.Outputs;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Files of a folder that a goal changes. */
final class ChangedFiles {
  private ChangedFiles() {}

  /**
   * Puts every change in its place in the folder, each file whole.
   *
   * @param changed the text of each file, by its path below the folder
   * @return paths of what was written, below the folder
   * @throws IOException where the disk fails
   */
  static List<String> write(Path root, Map<String, String> changed) throws IOException {
    Outputs outputs = Outputs.over(root);
    Map<String, String> inOrder = new TreeMap<>(changed);
    for (Map.Entry<String, String> one : inOrder.entrySet()) {
      outputs.write(one.getKey(), one.getValue());
    }
    return List.copyOf(inOrder.keySet());
  }
}
