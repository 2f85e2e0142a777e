package dev.pellucid.engine.starter;

import java.util.List;

/**
 * What a folder is to get.
 *
 * @param wishes what was wished, or taken where nothing was
 * @param files in the order in which they are to be written
 * @param begins whether the first feeds are among them; a folder that has feeds gets none
 * @param notes what a person should know of the place
 */
public record Plan(Wishes wishes, List<StarterFile> files, boolean begins, List<String> notes) {
  public Plan {
    files = List.copyOf(files);
    notes = List.copyOf(notes);
  }
}
