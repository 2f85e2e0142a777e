package dev.pellucid.engine.data;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.SourceFile;
import java.util.Collection;
import java.util.List;
import java.util.SortedMap;
import java.util.stream.Stream;

/**
 * The data files of a folder to a {@link FeedTables} and findings; never an exception for what a
 * person wrote.
 *
 * <p>The place of a file says what it tells. {@link TablesState} has the route, and reads a folder
 * of which most is known already.
 */
public final class TablesReader {
  private TablesReader() {}

  /**
   * Reads the data files of one folder.
   *
   * @param files every YAML file under its path below it: {@code ingredients/maize.yaml}
   * @param closed those that have no text that can be had, with their names alone; what is wrong
   *     with them was said elsewhere
   */
  public static TablesRead read(
      SortedMap<String, SourceFile> files, SortedMap<String, SourceFile> closed) {
    return TablesState.empty().next(files, closed).stocked();
  }

  /** Whether the settings of a folder say that it has all its data itself. */
  public static boolean hasOwnData(SourceFile settings) {
    return SettingsReader.isOwn(settings);
  }

  /** Whether a finding says that a file stands where no data is read, whatever it holds. */
  public static boolean isMisplaced(Finding finding) {
    return finding.code().equals(Places.MISPLACED);
  }

  /** Whether a finding says that a nutrient names a stability class that there is not. */
  public static boolean isUnknownClass(Finding finding) {
    return finding.code().equals(ReferenceFindings.STABILITY);
  }

  /** Whether a finding says that a cap of an ingredient is hardly meant so. */
  public static boolean isCapInDoubt(Finding finding) {
    return finding.code().equals(CapSisters.CODE);
  }

  /** Every code that reading the tables can give, those of YAML left out. */
  public static List<Code> codes() {
    return Stream.of(
            KeyFindings.CODES,
            FigureFindings.CODES,
            ReferenceFindings.CODES,
            NutrientFindings.CODES,
            SettingsReader.CODES,
            LotFindings.CODES,
            UnusualFindings.CODES,
            List.of(
                SteamReader.ROWS,
                SequenceReader.CODE,
                ToleranceReader.CODE,
                FeedPlans.CODE,
                Places.MISPLACED,
                Sisters.CODE,
                CapSisters.CODE,
                StandInSisters.CODE,
                PriceChecks.CODE,
                PriceChecks.LEFT_OUT,
                CommonSpan.CODE,
                SizeChecks.CODE,
                RetentionReader.ORDER,
                PlantReader.SCALE,
                DryerReader.CODE,
                ParticleReader.PARTICLE))
        .flatMap(Collection::stream)
        .toList();
  }
}
