package dev.pellucid.maven;

import dev.pellucid.engine.folder.Bundled;
import dev.pellucid.engine.goal.FolderState;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Data that came along with the version of the plugin that a state asks for, each had once. */
final class DataOfThen implements GitPast.ThenData {
  private final @Nullable String version;
  private final Optional<FormerData> former;
  private final Map<String, Optional<Bundled>> known = new HashMap<>();
  private final Map<String, Optional<String>> versions = new HashMap<>();

  /**
   * @param version of this plugin
   * @param former empty where other versions cannot be asked for
   */
  DataOfThen(@Nullable String version, Optional<FormerData> former) {
    this.version = version;
    this.former = former;
  }

  @Override
  public GitPast.WithData under(FolderState folder, Optional<String> pom) throws IOException {
    Optional<String> asked = pom.flatMap(this::version).filter(it -> !it.equals(version));
    if (asked.isEmpty()) {
      return new GitPast.WithData(ComingAlong.under(folder), "");
    }
    Optional<Bundled> then = data(asked.get());
    return then.isPresent()
        ? new GitPast.WithData(folder.over(then.get()), "")
        : new GitPast.WithData(
            ComingAlong.under(folder),
            "the data that came along with version "
                + asked.get()
                + " of the plugin cannot be had");
  }

  /** Most commits have the same POM. */
  private Optional<String> version(String pom) {
    return versions.computeIfAbsent(pom, PluginVersion::of);
  }

  private Optional<Bundled> data(String asked) throws IOException {
    Optional<Bundled> had = known.get(asked);
    if (had == null) {
      had = former.isPresent() ? former.get().of(asked) : Optional.empty();
      known.put(asked, had);
    }
    return had;
  }
}
