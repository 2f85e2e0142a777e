package dev.pellucid.engine.data;

import dev.pellucid.text.Span;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One file of {@code plant/}.
 *
 * @param shrink the part of the finished feed that dust, fines and start-up take
 * @param airTemperature of the mash before steam, in °C
 * @param dryers in the order of the file
 * @param dies the holes of the dies that are there, in mm; empty where none is told
 * @param bags what goes into the bags that are filled there, in kg; empty where none is told
 * @param coater how oil goes on
 * @param coaterLoad the most kernel and coat that the coater takes at once, in kg
 * @param scales by rising division
 * @param mostWeighings in how many weighings one line of one load may be weighed
 * @param mixers in the order of the file
 * @param alsoMakes what else is made there, of which its feeds must be kept clean
 */
public record Plant(
    String name,
    String title,
    double shrink,
    double airTemperature,
    List<Dryer> dryers,
    List<Double> dies,
    List<Double> bags,
    Optional<Coater> coater,
    OptionalDouble coaterLoad,
    List<Scale> scales,
    int mostWeighings,
    List<Mixer> mixers,
    List<Besides> alsoMakes,
    Span declared) {
  public Plant {
    scales = List.copyOf(scales);
    mixers = List.copyOf(mixers);
    dryers = List.copyOf(dryers);
    alsoMakes = List.copyOf(alsoMakes);
    dies = List.copyOf(dies);
    bags = List.copyOf(bags);
  }

  /** Something else that is made there, and where the file says so. */
  public record Besides(AlsoMade what, Span place) {}

  /** The dryer for a temperature in °C: the first that works at it; at none told, the first. */
  public Optional<Dryer> dryer(OptionalDouble celsius) {
    for (Dryer dryer : dryers) {
      if (dryer.works(celsius)) {
        return Optional.of(dryer);
      }
    }
    return Optional.empty();
  }

  /** Whether it makes this too. */
  public boolean alsoMakes(AlsoMade what) {
    for (Besides one : alsoMakes) {
      if (one.what() == what) {
        return true;
      }
    }
    return false;
  }

  /** What the plant has for coating. */
  public enum Coater {
    HAND,
    DRUM,
    VACUUM
  }
}
