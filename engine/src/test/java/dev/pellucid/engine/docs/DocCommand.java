package dev.pellucid.engine.docs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A line of a shell as pages show it.
 *
 * @param program its first word
 * @param words what is asked of it: goals and phases of Maven, or what git is to do
 * @param given what stands behind {@code -D}, by its name
 */
record DocCommand(String program, List<String> words, SortedMap<String, String> given) {
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
  private static final Pattern COMMENT = Pattern.compile("(^|\\s+)#.*$");
  private static final Pattern OURS =
      Pattern.compile("(?:dev\\.pellucid:pellucid-maven-plugin:([^:]+)|pellucid):([a-z-]+)");

  /** What Maven itself takes behind {@code -D} on our pages. */
  private static final Set<String> OF_MAVEN = Set.of("skipTests", "detail", "style.color");

  private static final Set<String> PHASES =
      Set.of("clean", "package", "verify", "install", "site", "test");
  private static final Set<String> PROGRAMS = Set.of("mvn", "git", "cd", "mkdir", "java");

  DocCommand {
    words = List.copyOf(words);
  }

  /** Empty where the line is a remark or blank. */
  static Optional<DocCommand> of(String line) {
    List<String> words = new ArrayList<>();
    SortedMap<String, String> given = new TreeMap<>();
    Matcher word = WORD.matcher(COMMENT.matcher(line).replaceFirst(""));
    while (word.find()) {
      String one = word.group(1) == null ? word.group(2) : word.group(1);
      if (one.startsWith("-D")) {
        int equals = one.indexOf('=');
        String name = one.substring(2, equals < 0 ? one.length() : equals);
        given.put(name, equals < 0 ? "true" : one.substring(equals + 1));
      } else if (!one.startsWith("-")) {
        words.add(one);
      }
    }
    return words.isEmpty()
        ? Optional.empty()
        : Optional.of(new DocCommand(words.get(0), words.subList(1, words.size()), given));
  }

  /** The goals of the plugin that Maven runs; those of a phase as {@code init} binds them. */
  List<String> goals() {
    List<String> goals = new ArrayList<>();
    for (String word : program.equals("mvn") ? words : List.<String>of()) {
      Matcher ours = OURS.matcher(word);
      if (ours.matches()) {
        goals.add(ours.group(2));
      } else if (word.equals("package")) {
        goals.add("batch-sheet");
      } else if (word.equals("verify") || word.equals("install")) {
        goals.addAll(List.of("batch-sheet", "check", "format-check"));
      }
    }
    return goals;
  }

  /** What a reader who types it would stumble over. */
  List<String> slips(PluginGoals plugin, String version) {
    List<String> slips = new ArrayList<>();
    if (!PROGRAMS.contains(program)) {
      slips.add("pages call no program " + program);
    }
    if (!program.equals("mvn")) {
      return slips;
    }
    for (String word : words) {
      Matcher ours = OURS.matcher(word);
      if (ours.matches()) {
        plugin.slip(ours.group(2)).ifPresent(slips::add);
        if (ours.group(1) != null && !ours.group(1).equals(version)) {
          slips.add("the version is " + version + ", not " + ours.group(1));
        }
      } else if (!PHASES.contains(word)) {
        slips.add("Maven has no phase " + word);
      }
    }
    given.keySet().stream()
        .filter(name -> !OF_MAVEN.contains(name))
        .filter(name -> goals().stream().noneMatch(goal -> plugin.slip(goal, name).isEmpty()))
        .forEach(name -> slips.add("no goal of " + words + " has a parameter " + name));
    return slips;
  }

  String given(String name) {
    return given.getOrDefault(name, "");
  }
}
