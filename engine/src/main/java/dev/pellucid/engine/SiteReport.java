package dev.pellucid.engine;

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
    return Counted.of(pages, "page") + " about " + Counted.of(feeds, "feed");
  }
}
