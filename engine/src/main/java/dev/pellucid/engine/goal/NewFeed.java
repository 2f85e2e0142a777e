package dev.pellucid.engine.goal;

import dev.pellucid.engine.data.Species;
import dev.pellucid.engine.form.Form;
import dev.pellucid.engine.form.PremixForm;
import dev.pellucid.engine.form.RecipeForm;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Profile;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.format.Formatter;
import dev.pellucid.parse.Lexing;
import dev.pellucid.syntax.FeedFile.PremixFile;
import dev.pellucid.syntax.FeedFile.RecipeFile;
import dev.pellucid.syntax.HeadLine;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.ToBeGiven;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/** A new recipe or premix, with the lines of one that is there. */
final class NewFeed {
  /** As long as the mark, and a figure, so that what is laid out for one stands for the other. */
  private static final String FIGURE = "1234";

  private final Shared shared;
  private final Map<String, String> typed;

  NewFeed(Shared shared, Map<String, String> typed) {
    this.shared = shared;
    this.typed = typed;
  }

  /** A recipe that is there, and what its head tells. */
  private record Model(RecipeFile file, List<String> species, List<String> meets) {
    static Model of(RecipeFile file) {
      List<String> species = new ArrayList<>();
      List<String> meets = new ArrayList<>();
      HeadLine.Recipe head =
          new HeadLine.Recipe(
              status -> {},
              line -> species.add(line.species().text()),
              fish -> {},
              habit -> {},
              line -> meets.add(line.profile().text()),
              batch -> {},
              plant -> {});
      file.head().forEach(line -> line.into(head));
      return new Model(file, species, meets);
    }

    String path() {
      return file.source().path();
    }
  }

  /**
   * One of a code.
   *
   * @param kind {@code recipe} or {@code premix}
   */
  NewReport of(String kind, String code) {
    if (!code.matches("[A-Z][A-Z0-9]*(-[A-Z0-9]+)*")) {
      return NewReport.refused(
          code
              + " cannot be the code of a "
              + kind
              + ": it is of capital letters and digits, parted by hyphens, and begins with a letter,"
              + " as in CG-36");
    }
    Optional<String> taken =
        shared.trees().path(code).or(() -> Optional.ofNullable(premixPaths().get(code)));
    if (taken.isPresent()) {
      return NewGoal.taken(code, taken.get());
    }
    return kind.equals("premix") ? premix(code) : recipe(code);
  }

  private Map<String, String> premixPaths() {
    return shared.trees().premixPaths();
  }

  private NewReport premix(String code) {
    List<PremixFile> there = shared.trees().premixes(new ArrayList<>());
    String like = asked("like");
    // Codes of one kind begin alike: VIT-MY is meant to be as VIT-NT.
    Optional<PremixFile> model =
        there.stream()
            .filter(one -> like.isEmpty() || one.source().stem().equals(like))
            .max(Comparator.comparingInt(one -> begunAlike(one.source().stem(), code)));
    if (!like.isEmpty() && model.isEmpty()) {
      return NewGoal.unknown(like, "premix", "-Dpellucid.like", premixPaths().keySet());
    }
    PremixForm form = new PremixForm();
    String text =
        model.map(one -> form.like(code, one)).orElseGet(() -> form.bare(code, shared.tables()));
    return NewReport.of(
        laidOut("premixes/" + code + ".premix", text),
        "with -Dpellucid.like=CODE it gets the lines of another premix; a recipe names it by a line"
            + " of its mix");
  }

  private static int begunAlike(String one, String other) {
    int at = 0;
    while (at < Math.min(one.length(), other.length()) && one.charAt(at) == other.charAt(at)) {
      at++;
    }
    return at;
  }

  private NewReport recipe(String code) {
    List<Model> models = models();
    String like = asked("like");
    Optional<Model> named =
        models.stream().filter(one -> one.file().source().stem().equals(like)).findFirst();
    if (!like.isEmpty() && named.isEmpty()) {
      return NewGoal.unknown(like, "recipe", "-Dpellucid.like", shared.trees().recipes());
    }
    String word = species(models, named);
    Species species = shared.tables().species().get(word);
    if (species == null) {
      return NewGoal.unknown(
          word, "species", "-Dpellucid.species", shared.tables().species().keySet());
    }
    Optional<Model> model =
        named.or(() -> models.stream().filter(one -> one.species().contains(word)).findFirst());
    RecipeForm form =
        new RecipeForm(
            species,
            profiles(species, model.map(Model::meets).orElse(List.of())),
            shared.tables(),
            new TreeMap<>(shared.resolver().premixes()));
    String text = model.map(one -> form.like(code, one.file())).orElseGet(() -> form.bare(code));
    return NewReport.of(
        laidOut(folder(model, word) + code + ".recipe", text),
        "when its figures stand there, mvn pellucid:least-cost finds shares that keep every limit");
  }

  private String asked(String parameter) {
    return typed.getOrDefault(parameter, "").strip();
  }

  /** The species that is named, or the one that all recipes of the folder are for. */
  private String species(List<Model> models, Optional<Model> named) {
    String asked = asked("species");
    TreeSet<String> fed = new TreeSet<>();
    named.map(List::of).orElse(models).forEach(one -> fed.addAll(one.species()));
    return asked.isEmpty() && fed.size() == 1 ? fed.first() : asked;
  }

  private List<Model> models() {
    List<Model> models = new ArrayList<>();
    for (String code : shared.trees().recipes()) {
      shared
          .trees()
          .path(code)
          .flatMap(path -> shared.trees().recipe(path, new ArrayList<>()))
          .map(Model::of)
          .ifPresent(models::add);
    }
    return models;
  }

  /** Profiles of need for a species, those that the model meets first. */
  private List<Profile> profiles(Species species, List<String> met) {
    return shared.resolver().profiles().stream()
        .filter(one -> one.kind() == Limit.Kind.NEED && one.isFor(species))
        .filter(one -> !one.species().isEmpty())
        .sorted(
            Comparator.comparing((Profile one) -> !met.contains(one.name()))
                .thenComparing(Profile::name))
        .toList();
  }

  private static String folder(Optional<Model> model, String species) {
    String path = model.map(Model::path).orElse(species + "/");
    return path.substring(0, path.lastIndexOf('/') + 1);
  }

  /** With white space where the goal format would have it. */
  private static Form laidOut(String path, String text) {
    String figures = text.replace(ToBeGiven.MARK, FIGURE);
    String laidOut =
        new Formatter(Lexing::lexemes).format(new SourceFile(path, figures)).orElse(figures);
    return new Form(path, laidOut.replace(FIGURE, ToBeGiven.MARK));
  }
}
