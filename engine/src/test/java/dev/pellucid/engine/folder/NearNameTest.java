package dev.pellucid.engine.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Names that were meant to be ours, and names that were not. */
class NearNameTest {
  @ParameterizedTest
  @CsvSource({
    "CG-36.RECIPE, .RECIPE, CG-36.recipe",
    "CG-36.Recipe, .Recipe, CG-36.recipe",
    "foo.YAML, .YAML, foo.yaml",
    "foo.YML, .YML, foo.yml",
    "Z-3.recip, .recip, Z-3.recipe",
    "Z-3.recipes, .recipes, Z-3.recipe",
    "Z-3.receipe, .receipe, Z-3.recipe",
    "Z-3.recpie, .recpie, Z-3.recipe",
    "VM.premixes, .premixes, VM.premix",
    "VM.premx, .premx, VM.premix",
    "a.limit, .limit, a.limits",
    "CG-36.figure, .figure, CG-36.figures",
    "maize.yam, '', ''",
    "maize.yamll, .yamll, maize.yaml",
    "CG-36.recipe.txt, .recipe.txt, CG-36.recipe",
    "CG-36.Recipe.TXT, .Recipe.TXT, CG-36.recipe",
    "maize.yaml.txt, .yaml.txt, maize.yaml",
    "VM.premix.docx, .premix.docx, VM.premix",
    "CG-36.recipe (1), .recipe (1), CG-36.recipe",
    "CG-36.recipe_old, .recipe_old, CG-36.recipe",
    "CG-36.recipe., .recipe., CG-36.recipe",
    "CG-36.recipe.2, .recipe.2, CG-36.recipe",
    "CG-36.yaml.recipe.txt, .recipe.txt, CG-36.yaml.recipe"
  })
  void isNear(String name, String ending, String meant) {
    assertEquals(
        ending.isEmpty() ? Optional.empty() : Optional.of(new NearName(ending, meant, false)),
        NearName.of(name));
  }

  @ParameterizedTest
  @ValueSource(strings = {"orig", "bak", "old", "rej", "tmp", "BAK"})
  void isACopy(String added) {
    assertEquals(
        Optional.of(new NearName(".recipe." + added, "CG-36.recipe", true)),
        NearName.of("CG-36.recipe." + added));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "README.txt",
        "README",
        "LICENSE",
        "photo.JPG",
        "pom.xml",
        "page.html",
        "settings.toml",
        "data.json",
        "table.csv",
        "recipe",
        "recipe.txt",
        "recipes.md",
        "yaml",
        "CG-36.recipe~",
        ".CG-36.recipe.swp",
        "#CG-36.recipe#",
        ".#CG-36.recipe",
        "CG-36.recipe.pdf",
        "CG-36.recipe.html",
        "CG-36.recipe.sig",
        "values.yaml.j2",
        "report.2026",
        "a.limited",
        "film.mix",
        "CG-36.figs"
      })
  void isNot(String name) {
    assertEquals(Optional.empty(), NearName.of(name));
  }
}
