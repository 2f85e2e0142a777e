package dev.pellucid.maven;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What every call of git is told beside its question, so that a repository's own configuration runs
 * no program and git asks nobody and nothing beyond the disk.
 *
 * <p>Settings of the command line win over those of a repository. Filters have names that only the
 * repository knows; each that is there is turned off by its name. A tar archive is always written
 * by git itself: of all formats it is the one that no {@code tar.FORMAT.command} can take over.
 *
 * <p>Variables that would lead git to another repository than that of the folder are not handed on;
 * those about configuration of the user are.
 */
final class GitSettings {
  private static final List<String> FIXED =
      List.of(
          // A monitor of the file system may be any program, as may hooks.
          "core.fsmonitor=false",
          "core.hooksPath=/dev/null",
          "core.untrackedCache=false",
          "core.pager=cat",
          // No signature is asked for; a log would look at them where a repository wants it.
          "gpg.program=",
          "gpg.openpgp.program=",
          "gpg.x509.program=",
          "gpg.ssh.program=",
          "log.showSignature=false",
          "diff.external=",
          // Objects that are not there are not fetched: these are what would fetch them.
          "protocol.allow=never",
          "core.sshCommand=",
          "core.gitProxy=",
          "core.alternateRefsCommand=",
          "core.askPass=",
          "credential.helper=",
          "submodule.recurse=false",
          // A bare repository that was committed into another one is not taken for one.
          "safe.bareRepository=explicit");

  private static final List<String> NOT_HANDED_ON =
      List.of(
          "GIT_DIR",
          "GIT_WORK_TREE",
          "GIT_COMMON_DIR",
          "GIT_IMPLICIT_WORK_TREE",
          "GIT_PREFIX",
          "GIT_INTERNAL_SUPER_PREFIX",
          "GIT_INDEX_FILE",
          "GIT_OBJECT_DIRECTORY",
          "GIT_ALTERNATE_OBJECT_DIRECTORIES",
          "GIT_QUARANTINE_PATH",
          "GIT_NAMESPACE",
          "GIT_GRAFT_FILE",
          "GIT_SHALLOW_FILE",
          "GIT_REPLACE_REF_BASE",
          "GIT_NO_REPLACE_OBJECTS",
          "GIT_CONFIG",
          "GIT_ATTR_SOURCE",
          "GIT_LITERAL_PATHSPECS",
          "GIT_GLOB_PATHSPECS",
          "GIT_NOGLOB_PATHSPECS",
          "GIT_ICASE_PATHSPECS",
          "GIT_EXTERNAL_DIFF",
          "GIT_DIFF_OPTS",
          "GIT_PAGER",
          "GIT_EDITOR",
          "GIT_SEQUENCE_EDITOR",
          "GIT_ASKPASS",
          "SSH_ASKPASS",
          "GIT_SSH",
          "GIT_SSH_COMMAND",
          "GIT_PROXY_COMMAND");

  private static final Map<String, String> TOLD =
      Map.of(
          "GIT_TERMINAL_PROMPT", "0",
          "GIT_OPTIONAL_LOCKS", "0",
          "GIT_NO_LAZY_FETCH", "1",
          // Wins over protocol.NAME.allow of a repository; no protocol has such a name.
          "GIT_ALLOW_PROTOCOL", "none",
          // Its complaints are read.
          "LC_ALL", "C",
          "LANGUAGE", "C");

  private GitSettings() {}

  /** Options that stand before the name of a command. */
  static List<String> options() {
    List<String> options = new ArrayList<>(List.of("--no-pager"));
    for (String setting : FIXED) {
      options.add("-c");
      options.add(setting);
    }
    return options;
  }

  /**
   * Changes the environment of git.
   *
   * @param filters what the configuration says of filters, by key
   */
  static void into(Map<String, String> environment, List<String> filters) {
    environment.keySet().removeAll(NOT_HANDED_ON);
    environment.putAll(TOLD);
    int count = count(environment);
    for (String key : filters) {
      environment.put("GIT_CONFIG_KEY_" + count, key);
      environment.put("GIT_CONFIG_VALUE_" + count, key.endsWith(".required") ? "false" : "");
      count++;
    }
    environment.put("GIT_CONFIG_COUNT", String.valueOf(count));
  }

  /** How many settings the user's own environment brings. */
  private static int count(Map<String, String> environment) {
    try {
      return Math.max(0, Integer.parseInt(environment.getOrDefault("GIT_CONFIG_COUNT", "0")));
    } catch (NumberFormatException notANumber) {
      return 0;
    }
  }
}
