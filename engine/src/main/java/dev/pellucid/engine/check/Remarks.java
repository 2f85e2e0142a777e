package dev.pellucid.engine.check;

import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.finding.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Hears the rules, and keeps what each says in its order. */
public final class Remarks implements Consumer<Finding> {
  private final List<Remark> heard = new ArrayList<>();

  @Override
  public void accept(Finding finding) {
    heard.add(new Remark(finding, Optional.empty()));
  }

  /** Something about how one limit stands. */
  void accept(Finding finding, LimitStatus about) {
    heard.add(new Remark(finding, Optional.of(about)));
  }

  List<Remark> all() {
    return List.copyOf(heard);
  }
}
