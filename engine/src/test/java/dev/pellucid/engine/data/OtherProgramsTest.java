package dev.pellucid.engine.data;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.text.SourceFile;
import org.junit.jupiter.api.Test;

/** A file of another program is passed over, and one of ours in a wrong place never is. */
class OtherProgramsTest {
  private static boolean foreign(String path, String text) {
    return OtherPrograms.own(DataFile.of(path, new SourceFile(path, text)));
  }

  @Test
  void whatOtherProgramsKeepIsTheirs() {
    assertTrue(foreign("docker-compose.yaml", "services:\n  web: {image: a, ports: ['80:80']}\n"));
    assertTrue(foreign("mkdocs.yml", "site_name: Pond\ntheme:\n  name: plain\nnav:\n  - a.md\n"));
    assertTrue(foreign("deploy/web.yaml", "apiVersion: v1\nkind: Service\nmetadata:\n  name: w\n"));
    assertTrue(foreign("playbook.yaml", "- hosts: all\n  tasks:\n    - name: a\n"));
    assertTrue(foreign("charts/a.yaml", "{{ if .on }}\na: b\n{{ end }}\n"));
    assertTrue(foreign("list.yaml", ""));
  }

  @Test
  void aKeyOfOursAtAnyDepthMakesItOurs() {
    assertFalse(foreign("store/oats.yaml", "name: Oats\ncontents:\n  - moisture: 12 %\n"));
    assertFalse(foreign("x/all.yaml", "lysine: {title: Lysine}\nzinc:\n  stability: stable\n"));
    assertFalse(foreign("x/label.yaml", "handbook:\n  standing: published\n"));
    assertFalse(foreign("november.yaml", "from: 2026-11-01\nprices:\n  maize: 0.2 EUR/kg\n"));
  }

  @Test
  void aPlaceThatIsNearlyOursMakesItOurs() {
    assertFalse(foreign("ingredient/oats.yaml", "name: Oats\n"));
    assertFalse(foreign("ingredients/oats.yml", "a: b\n"));
    assertFalse(foreign("old/ingredients/oats.yaml", "a: b\n"));
    assertFalse(foreign("group.yaml", "a: b\n"));
    assertFalse(foreign("conf/pellucid.yaml", "a: b\n"));
    assertFalse(foreign("practice/retentions.yaml", "a: b\n"));
  }
}
