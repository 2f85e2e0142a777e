package dev.pellucid.parse;

import dev.pellucid.parse.generated.FeedTokens;
import dev.pellucid.syntax.FileKind;

/** The token that each kind of file opens with. */
final class OpeningWords {
  private OpeningWords() {}

  static int type(FileKind kind) {
    return switch (kind) {
      case RECIPE -> FeedTokens.RECIPE;
      case PREMIX -> FeedTokens.PREMIX;
      case PROFILE -> FeedTokens.PROFILE;
    };
  }
}
