package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.pellucid.engine.goal.AskedOn;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is stopped at six in the morning is stopped today, whatever day a project file fixes. */
class AskedOnTest {
  private static final LocalDate TODAY = LocalDate.of(2027, 3, 31);
  private static final LocalDate OTHER = LocalDate.of(2026, 11, 25);

  @Test
  void aDayThatIsFixedDoesNotCount() {
    AskedOn asked = AskedOn.of(Optional.empty(), Optional.of(OTHER), TODAY);
    assertEquals(TODAY, asked.day());
    assertEquals(
        Optional.of("today by the clock; pellucid.day of pom.xml, 2026-11-25, does not count here"),
        asked.otherwise());
  }

  @Test
  void aDayThatIsTypedCounts() {
    AskedOn asked = AskedOn.of(Optional.of(OTHER), Optional.empty(), TODAY);
    assertEquals(OTHER, asked.day());
    assertEquals(Optional.of("2026-11-25 was asked for; today is 2027-03-31"), asked.otherwise());
  }

  @Test
  void nothingIsSaidWhereAllAreOne() {
    assertEquals(
        Optional.empty(), AskedOn.of(Optional.of(TODAY), Optional.of(OTHER), TODAY).otherwise());
    assertEquals(
        Optional.empty(), AskedOn.of(Optional.empty(), Optional.of(TODAY), TODAY).otherwise());
    assertEquals(AskedOn.today(TODAY), AskedOn.of(Optional.empty(), Optional.empty(), TODAY));
  }
}
