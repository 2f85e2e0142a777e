package dev.pellucid.engine.docs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;

/**
 * A page of the documentation as a parser of Markdown sees it.
 *
 * <p>A comment {@code <!-- folder: example -->} is a block too, of kind {@link #FOLDER}: what
 * follows runs in a new folder. So is {@code <!-- held by: SomeTest -->}, of kind {@link #HELD}: a
 * test of its own holds the blocks that follow.
 *
 * @param blocks in the order of the page
 * @param anchors what a link can lead to on it
 * @param links where its links lead
 */
record DocPage(Path file, List<DocBlock> blocks, List<String> anchors, List<String> links) {
  static final String FOLDER = "folder:";
  static final String HELD = "held-by:";

  private static final Parser PARSER =
      Parser.builder().includeSourceSpans(IncludeSourceSpans.BLOCKS).build();
  private static final Pattern START = Pattern.compile("<!-- (folder|held by): (\\w+) -->");
  private static final Pattern NO_ANCHOR = Pattern.compile("[^\\p{L}\\p{N} _-]");

  DocPage {
    blocks = List.copyOf(blocks);
    anchors = List.copyOf(anchors);
    links = List.copyOf(links);
  }

  /** Every page of the documentation of the modules. */
  static List<Path> all() throws IOException {
    List<Path> pages = new ArrayList<>();
    for (Path docs : List.of(Path.of("docs"), Path.of("..", "maven-plugin", "docs"))) {
      if (Files.isDirectory(docs)) {
        try (Stream<Path> files = Files.walk(docs)) {
          files.filter(file -> file.toString().endsWith(".md")).sorted().forEach(pages::add);
        }
      }
    }
    return pages;
  }

  static DocPage of(Path file) throws IOException {
    return of(file, Files.readString(file));
  }

  static DocPage of(Path file, String markdown) {
    Collector found = new Collector();
    PARSER.parse(markdown).accept(found);
    return new DocPage(file, found.blocks, found.anchors, found.links);
  }

  /** The blocks of a kind. */
  List<DocBlock> blocks(String... kinds) {
    List<String> asked = List.of(kinds);
    return blocks.stream().filter(block -> asked.contains(block.kind())).toList();
  }

  DocPage with(List<DocBlock> others) {
    return new DocPage(file, others, anchors, links);
  }

  @Override
  public String toString() {
    return file.getFileName().toString();
  }

  /** Takes down what the tests of pages want of a document. */
  private static final class Collector extends AbstractVisitor {
    private final List<DocBlock> blocks = new ArrayList<>();
    private final List<String> anchors = new ArrayList<>();
    private final List<String> links = new ArrayList<>();

    @Override
    public void visit(FencedCodeBlock block) {
      blocks.add(DocBlock.of(line(block), block.getInfo(), block.getLiteral()));
    }

    @Override
    public void visit(HtmlBlock html) {
      Matcher start = START.matcher(html.getLiteral());
      while (start.find()) {
        String kind = start.group(1).equals("folder") ? FOLDER : HELD;
        blocks.add(DocBlock.of(line(html), kind + " " + start.group(2), ""));
      }
    }

    @Override
    public void visit(Heading heading) {
      StringBuilder words = new StringBuilder();
      heading.accept(
          new AbstractVisitor() {
            @Override
            public void visit(Text text) {
              words.append(text.getLiteral());
            }

            @Override
            public void visit(Code code) {
              words.append(code.getLiteral());
            }
          });
      anchors.add(anchor(words.toString()));
      visitChildren(heading);
    }

    @Override
    public void visit(Link link) {
      links.add(link.getDestination());
      visitChildren(link);
    }

    private static int line(Node node) {
      return node.getSourceSpans().get(0).getLineIndex() + 1;
    }
  }

  /** As code hosts make it of a heading. */
  static String anchor(String heading) {
    String plain = NO_ANCHOR.matcher(heading.toLowerCase(Locale.ROOT)).replaceAll("");
    return plain.replace(' ', '-');
  }
}
