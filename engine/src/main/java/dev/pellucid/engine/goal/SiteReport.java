package dev.pellucid.engine.goal;

import dev.pellucid.text.Plural;

/**
 * What came of writing the pages about a folder.
 *
 * @param check the same folder checked
 * @param feeds how many feeds have a page
 * @param pages how many pages were written
 */
public record SiteReport(CheckReport check, int feeds, int pages) {

  /** One line for the end of a run. */
  public String tally() {
    return Plural.of(pages, "page") + " about " + Plural.of(feeds, "feed");
  }
}
