package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.check.SlippedFolder;
import dev.pellucid.engine.goal.SheetReport;
import dev.pellucid.engine.goal.Version;
import dev.pellucid.show.FindingText;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.ResourceLock;
import org.junit.jupiter.api.parallel.Resources;

/** The same folder on the same day gives the same text, wherever and however often it is asked. */
@ResourceLock(Resources.LOCALE)
@ResourceLock(Resources.TIME_ZONE)
class SameBytesTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  @TempDir Path copy = Path.of("");

  @Test
  void findingsAndSheetsInAnotherZoneLocaleAndRun() throws IOException {
    new SlippedFolder(copy)
        .with("catfish/CS-45.recipe", "min 43 %     in 95", "min 46 %     in 95")
        .with("catfish/CG-36.recipe", "soybean-meal-48              44", "soyabean-meal 44")
        .with("carp/KG-33.recipe", "temperature       80 °C", "TEMPERATURE  80 °C")
        .with("ingredients/maize.yaml", "starch:", "STARCHI:");
    String here = everything();
    assertTrue(here.contains("TG-44") && here.contains("[below-minimum]"), here);
    assertEquals(here, everything());
    assertEquals(here, in("tr-TR", "Pacific/Kiritimati"));
    assertEquals(here, in("ar-EG-u-nu-arab", "Pacific/Pago_Pago"));
  }

  private String in(String locale, String zone) throws IOException {
    Locale usual = Locale.getDefault();
    TimeZone usualZone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(locale));
      TimeZone.setDefault(TimeZone.getTimeZone(zone));
      return everything();
    } finally {
      Locale.setDefault(usual);
      TimeZone.setDefault(usualZone);
    }
  }

  /** Findings, tally, and each sheet twice. */
  private String everything() throws IOException {
    SheetReport report = OwnFolder.batchSheets(copy, DAY, Version.committed("1a2b3c4"));
    StringBuilder all = new StringBuilder();
    all.append(FindingText.of(report.check().findings()));
    all.append(report.check().tally()).append('\n').append(report.withheld()).append('\n');
    report.sheets().forEach(sheet -> all.append(sheet.code()).append('\n').append(sheet.text()));
    report.sheets().forEach(sheet -> all.append(sheet.html()));
    return all.toString();
  }
}
