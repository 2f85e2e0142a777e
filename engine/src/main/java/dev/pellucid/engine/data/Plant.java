package dev.pellucid.engine.data;

import dev.pellucid.text.Span;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * One file of {@code plant/}.
 *
 * @param shrink the part of the finished feed that dust, fines and start-up take
 * @param airTemperature of the mash before steam, in °C
 * @param trayLoad wet feed on one tray, in kg
 * @param trays how many trays the dryer takes at once
 * @param dies the holes of the dies that are there, in mm; empty where none is told
 * @param bags what goes into the bags that are filled there, in kg; empty where none is told
 * @param coater how oil goes on
 * @param coaterLoad the most kernel and coat that the coater takes at once, in kg
 * @param scales by rising division
 * @param mostWeighings in how many weighings one line of one load may be weighed
 * @param mixers in the order of the file
 */
public record Plant(
    String name,
    String title,
    double shrink,
    double airTemperature,
    OptionalDouble trayLoad,
    OptionalInt trays,
    List<Double> dies,
    List<Double> bags,
    Optional<Coater> coater,
    OptionalDouble coaterLoad,
    List<Scale> scales,
    int mostWeighings,
    List<Mixer> mixers,
    Span declared) {
  public Plant {
    scales = List.copyOf(scales);
    mixers = List.copyOf(mixers);
    dies = List.copyOf(dies);
    bags = List.copyOf(bags);
  }

  /** What the plant has for coating. */
  public enum Coater {
    HAND,
    DRUM,
    VACUUM
  }
}
