package dev.pellucid.syntax;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** The steps of a process. Their order in a recipe is meaning. */
public enum Step {
  GRIND(does(Work.COMES_BEFORE_WEIGHING), Property.SCREEN),
  BLEND(does(Work.MIXES), Property.TIME),
  ADD_LIQUID(does(Work.MIXES), Property.TIME, Property.TEMPERATURE),
  ADD_WATER(does(Work.MIXES), Property.ON_MIX, Property.TO_MOISTURE, Property.TEMPERATURE),
  CONDITION(
      does(Work.MIXES, Work.HEATS, Work.DESTROYS),
      Property.TEMPERATURE,
      Property.START,
      Property.TIME),
  PELLET(
      does(Work.SHAPES, Work.HEATS, Work.DESTROYS),
      Property.TEMPERATURE,
      Property.DIE,
      Property.LENGTH),
  EXTRUDE(
      does(Work.SHAPES, Work.HEATS, Work.DESTROYS),
      Property.TEMPERATURE,
      Property.DIE,
      Property.LENGTH),
  DRY(does(Work.DRIES, Work.DESTROYS), Property.TEMPERATURE, Property.TIME, Property.MOISTURE),
  COOL(does(Work.DRIES), Property.TEMPERATURE, Property.TIME, Property.MOISTURE),
  COAT(does(Work.IS_DONE_ONCE), Property.METHOD, Property.TEMPERATURE),
  SIEVE(does(Work.LEAVES_AS_IT_IS), Property.SCREEN),
  PACK(does(Work.LEAVES_AS_IT_IS, Work.IS_DONE_ONCE, Work.ENDS), Property.BAG),
  STORE(
      does(Work.LEAVES_AS_IT_IS, Work.IS_DONE_ONCE, Work.ENDS),
      Property.SHELF_LIFE,
      Property.TEMPERATURE);

  /** What a step does to a feed, or when it is done. */
  private enum Work {
    COMES_BEFORE_WEIGHING,
    MIXES,
    HEATS,
    SHAPES,
    DRIES,
    DESTROYS,
    LEAVES_AS_IT_IS,
    IS_DONE_ONCE,
    ENDS
  }

  private final Set<Work> works;
  private final Set<Property> properties;
  private final String word;

  Step(Set<Work> works, Property... properties) {
    this.works = works;
    this.properties = Set.of(properties);
    this.word = name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static Set<Work> does(Work... works) {
    return Set.of(works);
  }

  /** Whether it is done to ingredients by themselves, before a batch is weighed. */
  public boolean comesBeforeWeighing() {
    return works.contains(Work.COMES_BEFORE_WEIGHING);
  }

  /** Whether it makes the mix that goes to the die. */
  public boolean mixes() {
    return works.contains(Work.MIXES);
  }

  /** Whether it heats the mix on its way through the die. */
  public boolean heats() {
    return works.contains(Work.HEATS);
  }

  /** Whether it makes pellets. */
  public boolean shapes() {
    return works.contains(Work.SHAPES);
  }

  /** Whether it takes water off. */
  public boolean dries() {
    return works.contains(Work.DRIES);
  }

  /** Whether what heat destroys is lost in it. */
  public boolean destroys() {
    return works.contains(Work.DESTROYS);
  }

  /**
   * Whether it is done to the finished feed and changes nothing in it: what is coated is on by
   * then.
   */
  public boolean leavesFeedAsItIs() {
    return works.contains(Work.LEAVES_AS_IT_IS);
  }

  /** Whether it is done at one place of the way, wherever its lines are written. */
  public boolean isDoneOnce() {
    return works.contains(Work.IS_DONE_ONCE);
  }

  /** Whether the feed goes through no other step after it. */
  public boolean ends() {
    return works.contains(Work.ENDS);
  }

  /** As written in a file: {@code add-water}. */
  public String word() {
    return word;
  }

  public boolean has(Property property) {
    return properties.contains(property);
  }

  /** What may be said of this step, in the order of the words. */
  public Set<Property> properties() {
    return new TreeSet<>(properties);
  }

  public static Optional<Step> of(String word) {
    for (Step step : values()) {
      if (step.word().equals(word)) {
        return Optional.of(step);
      }
    }
    return Optional.empty();
  }
}
