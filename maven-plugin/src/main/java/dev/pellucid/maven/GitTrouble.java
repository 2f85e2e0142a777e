package dev.pellucid.maven;

import dev.pellucid.text.Sentence;
import java.io.File;
import java.io.IOException;
import java.time.Duration;

/** Why git gave no answer. The message is a sentence that says what to do. */
final class GitTrouble extends IOException {
  private static final long serialVersionUID = 1;

  private final boolean isUsual;

  private GitTrouble(boolean isUsual, String sentence) {
    super(sentence);
    this.isUsual = isUsual;
  }

  /** Whether a folder may well be so: goals that can do without git need not speak of it. */
  boolean isUsual() {
    return isUsual;
  }

  static GitTrouble notInstalled() {
    return new GitTrouble(
        true,
        "the program git was not found on the path, so no revision can be read; install it, or"
            + " name a folder in place of a revision");
  }

  static GitTrouble notUnderGit(File folder) {
    return new GitTrouble(
        true,
        folder
            + " is not under git, so it has no revisions; put it under git with git init, or name a"
            + " folder in place of a revision");
  }

  static GitTrouble nothingCommitted(File folder) {
    return new GitTrouble(
        true, "nothing was committed yet in " + folder + "; commit first: git add . && git commit");
  }

  static GitTrouble notTrusted(File folder) {
    return new GitTrouble(
        false,
        "git does not read "
            + folder
            + ", since it belongs to another user; if you trust it, say so: git config --global"
            + " --add safe.directory with the path of the repository");
  }

  static GitTrouble notARevision(String name) {
    return new GitTrouble(
        false,
        "\""
            + shown(name)
            + "\" cannot be the name of a revision: it begins with a dash or holds a control"
            + " character; name a commit, a branch, a tag or a folder");
  }

  static GitTrouble range(String name) {
    return new GitTrouble(
        false,
        shown(name)
            + " is a range, and one revision is taken here; for what came on this branch since it"
            + " left main give -Dpellucid.from=main...");
  }

  static GitTrouble twoEnds(String from, String to) {
    return new GitTrouble(
        false,
        shown(from)
            + " says what is compared with what, and pellucid.to says "
            + shown(to)
            + " beside it; leave one of the two out");
  }

  static GitTrouble noCommonCommit(String one, String other, boolean isShallow) {
    String remedy =
        isShallow
            ? "; in this clone history ends early, fetch the rest: git fetch --unshallow"
            : "; they have no history in common";
    return new GitTrouble(
        false,
        "no commit was found that both "
            + shown(one)
            + " and "
            + shown(other)
            + " come from"
            + remedy);
  }

  static GitTrouble unknown(String name, boolean isShallow) {
    String remedy =
        isShallow
            ? "; this clone is shallow, fetch the rest first: git fetch --unshallow"
            : "; git log and git branch --all show which there are";
    return new GitTrouble(
        false, shown(name) + " is neither a folder nor a revision that git knows here" + remedy);
  }

  static GitTrouble noSuchFolder(File folder, String name) {
    return new GitTrouble(
        false,
        "the folder "
            + folder
            + " is not in the revision "
            + shown(name)
            + "; where it had another place then, unpack that state and name its folder");
  }

  static GitTrouble hung(String what, Duration most) {
    return new GitTrouble(
        false,
        "git gave no answer within "
            + Math.max(1, most.toSeconds())
            + " s and was stopped: git "
            + what
            + "; run it by hand to see what holds it up");
  }

  static GitTrouble tooMuch(String what, long most) {
    return new GitTrouble(
        false, "git printed more than " + most + " bytes and was stopped: git " + what);
  }

  static GitTrouble refused(String what, String said) {
    String first = said.lines().findFirst().orElse("it does not say why");
    return new GitTrouble(false, "git " + what + " failed: " + shown(first));
  }

  /** As it can be printed, on one line. */
  private static String shown(String text) {
    return Sentence.of(text);
  }
}
