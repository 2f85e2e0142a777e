package dev.pellucid.maven;

import dev.pellucid.engine.folder.Bundled;
import dev.pellucid.engine.goal.FolderState;

/** The data that come with this plugin, read once. */
final class ComingAlong {
  private static final Bundled DATA = Bundled.ofThisVersion();

  private ComingAlong() {}

  static Bundled data() {
    return DATA;
  }

  /** A folder with these data under it. */
  static FolderState under(FolderState folder) {
    return folder.over(DATA);
  }
}
