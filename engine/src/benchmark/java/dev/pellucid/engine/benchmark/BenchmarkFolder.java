package dev.pellucid.engine.benchmark;

import dev.pellucid.text.SourceFile;
import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;

/**
 * A folder of recipes to be checked: the data of the example folder, one profile, and as many
 * made-up recipes as asked for.
 *
 * @param root where it lies
 * @param recipes the files of the recipes, in order
 * @param broken how many of them break one limit
 */
record BenchmarkFolder(Path root, List<Path> recipes, int broken) {
  private static final long SEED = 20_261_125;
  private static final int A_HUNDRED_EACH = 100;
  private static final List<String> SHARED =
      List.of("ingredients", "nutrients", "species", "plant", "practice", "prices");

  BenchmarkFolder {
    recipes = List.copyOf(recipes);
  }

  /**
   * Writes a folder.
   *
   * @param example the example folder, whose data is copied
   * @param brokenEach one recipe in so many breaks a limit; 0 for none
   */
  static BenchmarkFolder write(Path root, Path example, int count, int brokenEach)
      throws IOException {
    for (String shared : SHARED) {
      copy(example, example.resolve(shared), root);
    }
    for (String file : List.of("sources.yaml", "groups.yaml")) {
      copy(example, example.resolve(file), root);
    }
    String plain =
        "format: 1\nname: Made up\ncurrency: EUR\njurisdiction: none\nplant: river-mill\n";
    Files.writeString(root.resolve("pellucid.yaml"), plain);
    Files.createDirectories(root.resolve("limits"));
    Files.writeString(root.resolve("limits/pond-feed.limits"), RecipeWriter.PROFILE);
    List<Path> recipes = new ArrayList<>();
    int broken = 0;
    for (int number = 0; number < count; number++) {
      boolean breaks = brokenEach > 0 && number % brokenEach == 0;
      broken += breaks ? 1 : 0;
      Path file =
          root.resolve("recipes/" + number / A_HUNDRED_EACH)
              .resolve(RecipeWriter.code(number) + ".recipe");
      Files.createDirectories(file.resolveSibling("."));
      Files.writeString(file, RecipeWriter.write(SEED, number, breaks));
      recipes.add(file);
    }
    return new BenchmarkFolder(root, recipes, broken);
  }

  /** The text of every recipe. */
  List<SourceFile> texts() throws IOException {
    List<SourceFile> texts = new ArrayList<>();
    for (Path recipe : recipes) {
      texts.add(new SourceFile(String.valueOf(recipe.getFileName()), Files.readString(recipe)));
    }
    return texts;
  }

  private static void copy(Path from, Path what, Path to) throws IOException {
    Files.walkFileTree(
        what,
        new SimpleFileVisitor<Path>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            Path copy = to.resolve(from.relativize(file));
            Files.createDirectories(copy.resolveSibling("."));
            Files.copy(file, copy);
            return FileVisitResult.CONTINUE;
          }
        });
  }

  /** Takes the folder away again. */
  void delete() throws IOException {
    Files.walkFileTree(
        root,
        new SimpleFileVisitor<Path>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            Files.delete(file);
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(
              Path folder, @org.jspecify.annotations.Nullable IOException failed)
              throws IOException {
            Files.delete(folder);
            return FileVisitResult.CONTINUE;
          }
        });
  }
}
