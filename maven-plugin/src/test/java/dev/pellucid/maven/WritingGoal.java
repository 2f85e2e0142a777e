package dev.pellucid.maven;

import java.io.File;
import java.io.IOException;
import java.lang.reflect.Field;
import java.nio.file.Path;
import org.apache.maven.plugin.logging.SystemStreamLog;

/** Every goal that writes, run as Maven runs it on a folder in one of two states. */
enum WritingGoal {
  FORMAT("mash", ".*\\.recipe", KilledFolder.RECIPES) {
    @Override
    void run(Path feeds, int state) throws Exception {
      if (state == 0) {
        KilledFolder.spaced(feeds, 0);
      } else {
        goal(feeds, new FormatMojo()).execute();
      }
    }
  },
  FIGURES("mash", ".*\\.figures", KilledFolder.RECIPES) {
    @Override
    void run(Path feeds, int state) throws Exception {
      KilledFolder.maize(feeds, state);
      goal(feeds, new FiguresMojo()).execute();
    }
  },
  CHECK("target/out", ".*", 7) {
    @Override
    void run(Path feeds, int state) throws Exception {
      KilledFolder.maize(feeds, state);
      FolderGoal check = goal(feeds, new CheckMojo());
      set(check, "failOn", "never");
      set(check, "reports", out(feeds));
      set(check, "day", DAY);
      check.execute();
    }
  },
  BATCH_SHEET("target/out", ".*", 2 * KilledFolder.RECIPES) {
    @Override
    void run(Path feeds, int state) throws Exception {
      KilledFolder.maize(feeds, state);
      FolderGoal sheets = goal(feeds, new BatchSheetMojo());
      set(sheets, "sheets", out(feeds));
      set(sheets, "day", DAY);
      sheets.execute();
    }
  },
  COMPARE("target/out", ".*", 4) {
    @Override
    void run(Path feeds, int state) throws Exception {
      KilledFolder.maize(feeds, state);
      FolderGoal compare = goal(feeds, new CompareMojo());
      set(compare, "comparison", out(feeds));
      set(compare, "day", DAY);
      compare.execute();
    }
  },
  LEAST_COST("mash", ".*\\.recipe", KilledFolder.RECIPES) {
    @Override
    void run(Path feeds, int state) throws Exception {
      if (state == 0) {
        KilledFolder.dear(feeds);
      } else {
        FolderGoal goal = goal(feeds, new LeastCostMojo());
        set(goal, "leastCost", out(feeds));
        set(goal, "write", true);
        set(goal, "prices", "any");
        set(goal, "day", DAY);
        goal.execute();
      }
    }
  },
  LEAST_COST_TOLD("target/out", ".*", 4) {
    @Override
    void run(Path feeds, int state) throws Exception {
      KilledFolder.dear(feeds);
      KilledFolder.maize(feeds, state);
      FolderGoal goal = goal(feeds, new LeastCostMojo());
      set(goal, "leastCost", out(feeds));
      set(goal, "prices", "any");
      set(goal, "day", DAY);
      goal.execute();
    }
  },
  SHARE_OUT("mash", ".*\\.recipe", KilledFolder.RECIPES) {
    @Override
    void run(Path feeds, int state) throws Exception {
      KilledFolder.plan(feeds, 0);
      if (state == 0) {
        KilledFolder.dear(feeds);
      } else {
        FolderGoal goal = shareOut(feeds);
        set(goal, "write", true);
        goal.execute();
      }
    }
  },
  SHARE_OUT_TOLD("target/out", ".*", 4) {
    @Override
    void run(Path feeds, int state) throws Exception {
      KilledFolder.plan(feeds, state);
      KilledFolder.dear(feeds);
      shareOut(feeds).execute();
    }
  },
  REBALANCE("batches", ".*\\.yaml", 1) {
    @Override
    void run(Path feeds, int state) throws Exception {
      if (state == 0) {
        KilledFolder.batch(feeds);
      } else {
        FolderGoal goal = goal(feeds, new RebalanceMojo());
        set(goal, "batch", KilledFolder.BATCH);
        set(goal, "write", true);
        set(goal, "day", DAY);
        goal.execute();
      }
    }
  },
  RECALL("target/out", ".*", 3) {
    @Override
    void run(Path feeds, int state) throws Exception {
      KilledFolder.lot(feeds, state);
      FolderGoal goal = goal(feeds, new RecallMojo());
      set(goal, "recall", out(feeds));
      set(goal, "lot", "MZ-1");
      set(goal, "day", DAY);
      goal.execute();
    }
  },
  REPORT("target/out", ".*", KilledFolder.RECIPES) {
    @Override
    void run(Path feeds, int state) throws Exception {
      KilledFolder.maize(feeds, state);
      FolderGoal report = goal(feeds, new ReportMojo());
      set(report, "pages", out(feeds));
      set(report, "history", 1);
      set(report, "day", DAY);
      report.execute();
    }
  };

  static final String READY = "ready to be killed";
  private static final String DAY = "2026-11-25";

  private final String into;
  private final String written;
  private final int files;

  WritingGoal(String into, String written, int files) {
    this.into = into;
    this.written = written;
    this.files = files;
  }

  abstract void run(Path feeds, int state) throws Exception;

  Path into(Path feeds) {
    return feeds.resolve(into);
  }

  boolean writes(String path) {
    return path.matches(written);
  }

  /** How many it writes at least. */
  int files() {
    return files;
  }

  /** Runs a goal on one state and the other until it is killed. */
  public static void main(String[] words) throws Exception {
    WritingGoal goal = valueOf(words[0]);
    Path feeds = Path.of(words[1]);
    goal.run(feeds, 0);
    System.out.println(READY);
    for (int state = 1; true; state = 1 - state) {
      goal.run(feeds, state);
    }
  }

  private static FolderGoal goal(Path feeds, FolderGoal goal) throws IOException {
    goal.setLog(new Silent());
    set(goal, "folder", feeds.toFile());
    set(goal, "project", feeds.toFile());
    return goal;
  }

  private static FolderGoal shareOut(Path feeds) throws IOException {
    FolderGoal goal = goal(feeds, new ShareOutMojo());
    set(goal, "shareOut", out(feeds));
    set(goal, "plan", "december");
    set(goal, "prices", "any");
    set(goal, "day", DAY);
    return goal;
  }

  private static File out(Path feeds) {
    return feeds.resolve("target/out").toFile();
  }

  private static void set(FolderGoal goal, String parameter, Object value) throws IOException {
    for (Class<?> type = goal.getClass(); type != null; type = type.getSuperclass()) {
      try {
        Field field = type.getDeclaredField(parameter);
        field.setAccessible(true);
        field.set(goal, value);
        return;
      } catch (NoSuchFieldException above) {
        // Of all goals alike.
      } catch (IllegalAccessException closed) {
        throw new IOException(closed);
      }
    }
    throw new IOException("no such parameter: " + parameter);
  }

  /** Says nothing, for nobody reads it. */
  private static final class Silent extends SystemStreamLog {
    @Override
    public void info(CharSequence words) {}

    @Override
    public void warn(CharSequence words) {}

    @Override
    public void error(CharSequence words) {}
  }
}
