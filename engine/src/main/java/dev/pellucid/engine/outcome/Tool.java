package dev.pellucid.engine.outcome;

/**
 * What reports tell of this program; what nobody told is empty, and reports leave it out.
 *
 * @param version as it was built
 * @param address of what there is to read about it
 * @param rulesAddress of the folder in which the pages of rules lie, without a last {@code /}
 */
public record Tool(String version, String address, String rulesAddress) {
  public Tool {
    int end = rulesAddress.length();
    while (end > 0 && rulesAddress.charAt(end - 1) == '/') {
      end--;
    }
    rulesAddress = rulesAddress.substring(0, end);
  }
}
