package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The pages about the example folder in a real browser without a window. Where there is none on the
 * path, these tests are skipped and say so.
 */
class SiteBrowserTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final List<String> NAMES =
      List.of("chromium", "chromium-browser", "google-chrome");
  private static final Pattern SHOWN =
      Pattern.compile(
          "<tr data-kind=\"feeds\" data-words=\"[^\"]*\" data-species=\"[^\"]*\""
              + " data-standing=\"[^\"]*\"><th><a href=\"feeds/([^\"]+)\\.html\"");

  @TempDir static Path site = Path.of("");
  private static String browser = "";

  @BeforeAll
  static void write() throws IOException {
    browser = NAMES.stream().filter(SiteBrowserTest::isThere).findFirst().orElse("");
    assumeTrue(!browser.isEmpty(), "there is no chromium on the path: its tests are skipped");
    OwnFolder.report(Example.whole(), new PrintedPaths("recipes/"), DAY, List.of(), site);
  }

  private static boolean isThere(String name) {
    String path = System.getenv("PATH");
    return path != null
        && List.of(path.split(java.io.File.pathSeparator)).stream()
            .anyMatch(folder -> Files.isExecutable(Path.of(folder, name)));
  }

  @Test
  void withoutASearchEveryFeedIsShown() throws Exception {
    String page = dom("index.html");
    assertEquals(17, shown(page).size());
    assertTrue(page.contains("17 of 17 feeds shown"), "the count");
    assertTrue(page.contains(" ingredients shown, "), "the count of the others");
  }

  @Test
  void aSearchInTheAddressShowsWhatHoldsAllItsWords() throws Exception {
    assertEquals(List.of("CS-45", "KS-42", "SS-41", "TS-48"), shown(dom("index.html#starter")));
    assertEquals(List.of("TS-48"), shown(dom("index.html#starter%20TROUT")));
    assertEquals(
        List.of("CF-31", "CF-32", "CG-36", "CG-36I", "KF-29", "TF-40"),
        shown(dom("index.html#maize")));
    String none = dom("index.html#no-such-word");
    assertEquals(List.of(), shown(none));
    assertTrue(none.contains("0 of 17 feeds shown"), "the count");
  }

  /**
   * Anything that the policy of the page keeps from loading would be told on the console as well.
   */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "index.html",
        "index.html#50%",
        "feeds/CG-36.html",
        "feeds/KF-29.html",
        "ingredients/maize.html",
        "limits/catfish-grower.html"
      })
  void nothingIsSaidOnTheConsole(String page) throws Exception {
    Ran ran = run("--enable-logging=stderr", "--dump-dom", address(page));
    assertTrue(ran.out().contains("<main id=\"main\">"), ran.out());
    assertEquals(
        List.of(), ran.err().lines().filter(line -> line.contains("CONSOLE")).toList(), page);
  }

  @Test
  void aPagePrints() throws Exception {
    Path pdf = site.resolve("page.pdf");
    run("--no-pdf-header-footer", "--print-to-pdf=" + pdf, address("feeds/CG-36.html"));
    byte[] bytes = Files.readAllBytes(pdf);
    assertTrue(bytes.length > 10_000, bytes.length + " bytes");
    assertTrue(new String(bytes, 0, 5, StandardCharsets.US_ASCII).startsWith("%PDF-"));
  }

  /** A feed whose row is hidden carries the mark behind its words. */
  private static List<String> shown(String page) {
    List<String> codes = new ArrayList<>();
    Matcher row = SHOWN.matcher(page);
    while (row.find()) {
      codes.add(row.group(1));
    }
    return codes;
  }

  private static String address(String page) {
    int hash = page.indexOf('#');
    String file = hash < 0 ? page : page.substring(0, hash);
    return site.resolve(file).toUri() + (hash < 0 ? "" : page.substring(hash));
  }

  private static String dom(String page) throws Exception {
    return run("--dump-dom", address(page)).out();
  }

  private record Ran(String out, String err) {}

  private static Ran run(String... words) throws IOException, InterruptedException {
    Path profile = Files.createTempDirectory(site, "profile");
    List<String> command = new ArrayList<>();
    command.add(browser);
    command.addAll(
        List.of(
            "--headless",
            "--no-sandbox",
            "--disable-gpu",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync",
            "--user-data-dir=" + profile));
    command.addAll(List.of(words));
    Path err = profile.resolve("err.txt");
    Process ran = new ProcessBuilder(command).redirectError(err.toFile()).start();
    ran.getOutputStream().close();
    String out = new String(ran.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(ran.waitFor(60, TimeUnit.SECONDS), "the browser did not end");
    return new Ran(out, Files.readString(err));
  }
}
