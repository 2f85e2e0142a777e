package dev.pellucid.engine;

import dev.pellucid.engine.check.Inspection;
import dev.pellucid.engine.check.Judge;
import dev.pellucid.engine.check.Rules;
import dev.pellucid.engine.check.Verdict;
import dev.pellucid.engine.compute.Computation;
import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.compute.Weighing;
import dev.pellucid.engine.folder.FeedFolder;
import dev.pellucid.engine.larder.Larder;
import dev.pellucid.engine.larder.LarderReader;
import dev.pellucid.engine.larder.Stocked;
import dev.pellucid.engine.resolve.Resolution;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.engine.resolve.Resolver;
import dev.pellucid.finding.Finding;
import dev.pellucid.parse.FeedParser;
import dev.pellucid.parse.Parsed;
import dev.pellucid.syntax.FeedFile;
import dev.pellucid.syntax.FeedFile.PremixFile;
import dev.pellucid.syntax.FeedFile.ProfileFile;
import dev.pellucid.syntax.FeedFile.RecipeFile;
import dev.pellucid.text.SourceFile;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/**
 * The route of a check: the data files become the larder; premixes and profiles are parsed and
 * resolved; then each recipe by itself is parsed, resolved, computed, judged and looked at by every
 * rule. Nothing of a recipe is kept but its findings.
 */
public final class Pellucid {
  private final FeedFolder folder;
  private final LocalDate day;
  private final List<Finding> findings = new ArrayList<>();
  private final List<String> notChecked = new ArrayList<>();
  private int limits;

  private Pellucid(FeedFolder folder, LocalDate day) {
    this.folder = folder;
    this.day = day;
  }

  /**
   * Checks a folder.
   *
   * @param prefix what is printed before each path
   * @param day judges waivers and prices
   */
  public static CheckReport check(Path root, String prefix, LocalDate day) throws IOException {
    return new Pellucid(FeedFolder.list(root, prefix), day).run();
  }

  private CheckReport run() throws IOException {
    findings.addAll(folder.findings());
    Larder larder = larder();
    List<PremixFile> premixes = new ArrayList<>();
    for (FeedFile file : files(".premix")) {
      premixes.add((PremixFile) file);
    }
    List<ProfileFile> profiles = new ArrayList<>();
    for (FeedFile file : files(".limits")) {
      profiles.add((ProfileFile) file);
    }
    TreeMap<String, dev.pellucid.text.Span> codes = new TreeMap<>();
    List<String> recipes = folder.ending(".recipe");
    for (String path : recipes) {
      SourceFile named = new SourceFile(path, "");
      codes.put(named.stem(), named.beginning());
    }
    Resolver.Prepared prepared = Resolver.prepare(larder, premixes, profiles, codes, day);
    findings.addAll(prepared.findings());
    FeedComputer computer = new FeedComputer(larder);
    for (String path : recipes) {
      recipe(path, prepared.resolver(), computer, larder);
    }
    findings.sort(null);
    return new CheckReport(findings, recipes.size(), limits, notChecked);
  }

  private Larder larder() throws IOException {
    TreeMap<String, SourceFile> texts = new TreeMap<>();
    for (String path : folder.data()) {
      folder.read(path, findings).ifPresent(text -> texts.put(path, text));
    }
    Stocked stocked = LarderReader.read(texts);
    findings.addAll(stocked.findings());
    return stocked.larder();
  }

  private List<FeedFile> files(String extension) throws IOException {
    List<FeedFile> files = new ArrayList<>();
    for (String path : folder.ending(extension)) {
      folder.read(path, findings).map(this::parse).ifPresent(files::add);
    }
    return files;
  }

  private FeedFile parse(SourceFile text) {
    Parsed parsed = FeedParser.parse(text);
    findings.addAll(parsed.findings());
    return parsed.file();
  }

  private void recipe(String path, Resolver resolver, FeedComputer computer, Larder larder)
      throws IOException {
    String code = new SourceFile(path, "").stem();
    var file = folder.read(path, findings).map(this::parse);
    if (file.isEmpty()) {
      notChecked.add(code);
      return;
    }
    Resolution<ResolvedRecipe> resolution = resolver.recipe((RecipeFile) file.get());
    findings.addAll(resolution.findings());
    if (resolution.thing().isEmpty()) {
      notChecked.add(code);
      return;
    }
    ResolvedRecipe recipe = resolution.thing().get();
    Computation computed = computer.compute(recipe, Weighing.asWritten(recipe));
    List<Verdict> verdicts = computed.feed().map(Judge::verdicts).orElse(List.of());
    limits += verdicts.size();
    if (computed.feed().isEmpty()) {
      notChecked.add(code);
    }
    Inspection inspection =
        new Inspection(recipe, larder, computed.balances(), computed.feed(), verdicts, day);
    Rules.ALL.forEach(rule -> rule.look(inspection, findings::add));
  }
}
