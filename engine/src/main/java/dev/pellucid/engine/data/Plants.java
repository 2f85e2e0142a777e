package dev.pellucid.engine.data;

import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Finding;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * All files of {@code plant/}: each as it was read, and the one that the settings name, which holds
 * for what names none itself. A plant follows from its file alone.
 */
record Plants(
    ReadFiles<Optional<Plant>> reads,
    SortedMap<String, Plant> byName,
    Optional<Plant> chosen,
    List<Finding> findings) {

  static final Plants NONE =
      new Plants(ReadFiles.none(), new TreeMap<>(), Optional.empty(), List.of());

  Plants next(Nodes nodes, Frame frame) {
    ReadFiles<Optional<Plant>> next = reads.next(nodes.in(Places.PLANT), PlantReader::read);
    TreeMap<String, Plant> plants = new TreeMap<>();
    for (Optional<Plant> plant : next.things()) {
      if (plant.isPresent()) {
        plants.put(plant.get().name(), plant.get());
      }
    }
    Remarks remarks = new Remarks();
    remarks.addAll(next.findings());
    Optional<String> name = frame.settings().plant();
    if (name.isPresent()) {
      new Known(ReferenceFindings.PLANT, "a plant", "plant/", plants.keySet(), true)
          .check(new Scalar(name.get(), false, frame.plantPlace()), remarks);
    }
    Plant chosen = name.isPresent() ? plants.get(name.get()) : null;
    return new Plants(next, plants, Optional.ofNullable(chosen), remarks.findings());
  }
}
