package dev.pellucid.engine.yaml;

import dev.pellucid.finding.Finding;
import dev.pellucid.text.SourceFile;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.dataformat.yaml.YAMLFactory;

/**
 * YAML text in, nodes and findings out; never an exception for what a person wrote.
 *
 * <p>Three passes: a scan of the lines for slips that a YAML parser misunderstands or puts in the
 * wrong place ({@link LineScan}); the token stream of Jackson, made into nodes with their places
 * ({@link TreeBuilder}); and, where that stream breaks, our own sentence for the place where it
 * broke ({@link SyntaxError}). Only a small part of YAML is taken: no anchors, aliases, tags or
 * further documents, and text on one line unless {@code |} or {@code >} opens it.
 */
public final class YamlReader {
  /** The longest text that is read: 1 MiB. */
  public static final int LONGEST = 1 << 20;

  /**
   * With settings of its own, since Jackson would make new ones for every file. A key that stands
   * twice is named by {@link TreeBuilder}.
   */
  private static final YAMLFactory JACKSON =
      YAMLFactory.builder()
          .loadSettings(LoadSettings.builder().setAllowDuplicateKeys(true).build())
          .build();

  private YamlReader() {}

  public static YamlRead read(SourceFile file) {
    if (file.text().length() > LONGEST) {
      return broken(List.of(YamlFindings.tooLarge(file)));
    }
    LineScan scan = LineScan.of(file);
    if (!scan.slips().isEmpty()) {
      return broken(both(scan.remarks(), scan.slips()));
    }
    YamlRead read = parse(file);
    return scan.remarks().isEmpty()
        ? read
        : new YamlRead(read.root(), both(scan.remarks(), read.findings()), read.whole());
  }

  private static YamlRead parse(SourceFile file) {
    List<Finding> findings = new ArrayList<>();
    try (JsonParser tokens = JACKSON.createParser(ObjectReadContext.empty(), file.text())) {
      Optional<Yaml> root = new TreeBuilder(file, tokens, findings).document();
      return new YamlRead(root, findings, findings.isEmpty());
    } catch (JacksonException failed) {
      findings.removeIf(finding -> finding.code().equals(YamlFindings.OVER_LINES));
      if (findings.isEmpty()) {
        findings.add(SyntaxError.explain(file, failed));
      }
      return broken(findings);
    }
  }

  private static List<Finding> both(List<Finding> some, List<Finding> others) {
    List<Finding> all = new ArrayList<>(some);
    all.addAll(others);
    Collections.sort(all);
    return all;
  }

  private static YamlRead broken(List<Finding> findings) {
    return new YamlRead(Optional.empty(), findings, false);
  }
}
