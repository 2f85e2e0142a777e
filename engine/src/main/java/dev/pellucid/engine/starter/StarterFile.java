package dev.pellucid.engine.starter;

/**
 * A file of a folder of feeds that begins.
 *
 * @param path below the folder
 * @param part what it is for
 */
public record StarterFile(String path, String text, Part part) {
  /** What a file is for. */
  public enum Part {
    /**
     * What stands round feeds: how they are built, shown and kept. Any folder of feeds takes it.
     */
    FRAME,
    /** The first feeds and what belongs to them; only for a folder that has none. */
    FEEDS,
    /** What makes the folder one of feeds. It comes last, so that half a folder is none yet. */
    SETTINGS
  }
}
