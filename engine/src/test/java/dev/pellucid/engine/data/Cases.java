package dev.pellucid.engine.data;

import java.nio.file.Path;
import org.approvaltests.Approvals;
import org.approvaltests.core.Options;
import org.approvaltests.namer.NamerWrapper;

/** Whole texts that were read and accepted, beside the cases that give them. */
final class Cases {
  static final Path ROOT = Path.of("src", "test", "resources", "larder-cases");

  private Cases() {}

  /** Holds a text against the accepted one of a case. */
  static void verify(String folder, String name, String text) {
    String place = ROOT.resolve(folder).toAbsolutePath() + "/";
    Options options = new Options().forFile().withNamer(new NamerWrapper(() -> name, () -> place));
    Approvals.verify(text.isEmpty() ? "no findings\n" : text, options);
  }
}
