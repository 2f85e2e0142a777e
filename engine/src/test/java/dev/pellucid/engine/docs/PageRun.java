package dev.pellucid.engine.docs;

import dev.pellucid.finding.Finding;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A page of the documentation, run from its first block to its last as a reader would follow it.
 * DEVELOPERS.md says which kinds of blocks there are. What comes out is what the page tells and is
 * not so.
 */
final class PageRun {
  private static final Pattern FINDING = Pattern.compile("(?m)^(?=\\S+:\\d+:\\d+: \\w+: )");
  private static final Pattern WORD = Pattern.compile("[a-z]{3,}");
  private static final Set<String> SHOWN = Set.of("output", "finding", "folder");
  private static final Set<String> WRITTEN =
      Set.of("recipe", "premix", "limits", "yaml", "xml", "properties");

  private final Path place;
  private final DocPage page;
  private final PluginGoals plugin;
  private final String version;
  private final List<String> slips = new ArrayList<>();

  private @Nullable DocFolder folder;
  private boolean held;
  private int folders;
  private List<String> output = List.of();

  /** Findings that the page has shown or named, or that were there when it began. */
  private final Set<String> told = new HashSet<>();

  private PageRun(Path place, DocPage page, PluginGoals plugin, String version) {
    this.place = place;
    this.page = page;
    this.plugin = plugin;
    this.version = version;
  }

  /**
   * What a page tells and is not so.
   *
   * @param place an empty folder on the disk
   */
  static List<String> of(Path place, DocPage page) throws IOException {
    PageRun run = new PageRun(place, page, PluginGoals.read(), OwnVersion.read());
    for (int i = 0; i < page.blocks().size(); i++) {
      run.block(i);
    }
    return run.slips;
  }

  private void block(int number) throws IOException {
    DocBlock block = page.blocks().get(number);
    if (block.kind().equals(DocPage.FOLDER)) {
      begin(block);
    } else if (block.kind().equals(DocPage.HELD)) {
      held(block);
    } else if (block.notRun().isPresent()) {
      notRun(block);
    } else if (held) {
      // The test that the page names looks at it.
    } else if (folder == null && block.kind().equals("sh")) {
      typed(block);
    } else if (folder == null) {
      slip(block, "no <!-- folder: ... --> stands before it");
    } else {
      run(block, folder);
      told(number, folder);
    }
  }

  private void begin(DocBlock block) throws IOException {
    String as = block.settings().keySet().iterator().next();
    held = false;
    folder = DocFolder.begin(place.resolve(page + "-" + folders++), as);
    told.clear();
    if (!as.equals("empty")) {
      told.addAll(folder.grave().keySet());
    }
  }

  private void held(DocBlock block) throws IOException {
    held = true;
    String test = block.settings().keySet().iterator().next();
    if (!TestClasses.names().contains(test)) {
      slip(block, "there is no test " + test);
    }
  }

  private void notRun(DocBlock block) {
    if (block.notRun().orElse("").length() < 10) {
      slip(block, "write behind not-run: why it is not run");
    }
  }

  private void run(DocBlock block, DocFolder in) throws IOException {
    Optional<String> file = block.setting("file");
    if (block.kind().equals("sh")) {
      commands(block, in);
    } else if (SHOWN.contains(block.kind()) || block.says("of")) {
      show(block, in);
    } else if (block.kind().equals("diff") && file.isPresent()) {
      edit(block, in, file.get());
    } else if (WRITTEN.contains(block.kind()) && file.isPresent()) {
      write(block, in, file.get());
    } else {
      slip(block, "nobody knows how to run a block " + block.kind() + "; see DEVELOPERS.md");
    }
  }

  /** What a block shows must be there, and were a word of it another one it must be refused. */
  private void show(DocBlock block, DocFolder in) throws IOException {
    Optional<String> wrong = wrong(block, in);
    if (wrong.isPresent()) {
      slip(block, wrong.get());
    } else if (wrong(block.withText(WORD.matcher(block.text()).replaceFirst("zebra")), in)
        .isEmpty()) {
      slip(block, "it shows nothing of which a change would be seen");
    }
  }

  private Optional<String> wrong(DocBlock block, DocFolder in) throws IOException {
    Optional<String> of = block.setting("of");
    if (of.isPresent()) {
      return in.has(of.get())
          ? notIn(in.text(of.get()).lines().toList(), block, of.get())
          : Optional.of("there is no " + of.get());
    }
    return switch (block.kind()) {
      case "output" -> notIn(output, block, "the output");
      case "finding" -> notFound(block, in);
      default -> notThere(block, in);
    };
  }

  private void write(DocBlock block, DocFolder in, String path) throws IOException {
    if (!path.endsWith("." + block.kind())) {
      slip(block, path + " is no " + block.kind());
    }
    if (!block.says("part")) {
      in.write(path, block.text());
    } else if (in.has(path)) {
      in.writeParts(path, block.text());
    } else {
      slip(block, "there is no " + path + " of which it could be a part");
    }
  }

  private void edit(DocBlock block, DocFolder in, String path) throws IOException {
    if (!in.has(path)) {
      slip(block, "there is no " + path);
    } else {
      in.edit(path, block.lines()).ifPresent(wrong -> slip(block, wrong));
    }
  }

  private static Optional<String> notIn(List<String> whole, DocBlock block, String what) {
    return ShownLines.missing(whole, block.lines())
        .map(
            line ->
                what
                    + " does not have, or not in this order:\n"
                    + line
                    + "\nof\n"
                    + String.join("\n", whole));
  }

  private static Optional<String> notFound(DocBlock block, DocFolder in) throws IOException {
    List<String> printed = in.printed();
    return FINDING
        .splitAsStream(block.text())
        .map(String::strip)
        .filter(one -> !printed.contains(one))
        .findFirst()
        .map(one -> "the check does not say\n" + one + "\nit says\n" + String.join("\n", printed));
  }

  private static Optional<String> notThere(DocBlock block, DocFolder in) {
    return block.lines().stream()
        .map(line -> line.split("\\s", 2)[0])
        .filter(path -> !path.isEmpty() && !Files.exists(in.root().resolve(path)))
        .findFirst()
        .map(path -> "there is no " + path);
  }

  private void commands(DocBlock block, DocFolder in) throws IOException {
    for (DocCommand command : typed(block)) {
      command(command, in);
    }
  }

  /** The commands of a block that can be typed as they stand there. */
  private List<DocCommand> typed(DocBlock block) {
    List<DocCommand> commands = new ArrayList<>();
    for (String line : block.lines()) {
      Optional<DocCommand> command = DocCommand.of(line);
      List<String> wrong = command.map(it -> it.slips(plugin, version)).orElse(List.of());
      wrong.forEach(one -> slip(block, one));
      command.filter(it -> wrong.isEmpty()).ifPresent(commands::add);
    }
    return commands;
  }

  private void command(DocCommand command, DocFolder in) throws IOException {
    if (command.program().equals("git") && command.words().get(0).equals("commit")) {
      in.commit();
    } else if (!command.goals().isEmpty()) {
      output = GoalOutput.of(in, command);
    }
  }

  /**
   * After a block that changes the folder every new error and warning is shown by the blocks that
   * follow it, or named by {@code gives=CODE}, so that no example is wrong in silence.
   */
  private void told(int number, DocFolder in) throws IOException {
    DocBlock block = page.blocks().get(number);
    if (!block.says("file") && !block.says("gives")) {
      return;
    }
    String next = shownNext(number);
    Set<String> named = new HashSet<>(block.list("gives"));
    Map<String, Finding> unknown = new LinkedHashMap<>(in.grave());
    unknown.keySet().removeAll(told);
    told.addAll(unknown.keySet());
    Set<String> given = new HashSet<>();
    unknown.values().forEach(finding -> given.add(finding.code().text()));
    named.stream()
        .filter(code -> !given.contains(code))
        .forEach(code -> slip(block, "it does not give " + code + " but " + given));
    unknown.values().removeIf(finding -> named.contains(finding.code().text()));
    unknown.keySet().removeIf(next::contains);
    unknown.keySet().forEach(one -> slip(block, "the page does not tell that it gives\n" + one));
  }

  /** What the page shows until the folder changes again. */
  private String shownNext(int number) {
    StringBuilder shown = new StringBuilder();
    for (DocBlock next : page.blocks().subList(number + 1, page.blocks().size())) {
      if (next.says("file") || next.kind().equals(DocPage.FOLDER)) {
        break;
      }
      shown.append(next.kind().equals("finding") ? next.text() : "");
    }
    return shown.toString();
  }

  private void slip(DocBlock block, String what) {
    String file = Objects.requireNonNull(page.file().getFileName()).toString();
    slips.add(file + ":" + block.line() + ": " + what);
  }
}
