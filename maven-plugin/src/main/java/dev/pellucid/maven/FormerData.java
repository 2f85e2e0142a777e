package dev.pellucid.maven;

import dev.pellucid.engine.folder.Bundled;
import java.io.File;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.jar.JarFile;
import org.eclipse.aether.RepositorySystem;
import org.eclipse.aether.RepositorySystemSession;
import org.eclipse.aether.artifact.DefaultArtifact;
import org.eclipse.aether.repository.RemoteRepository;
import org.eclipse.aether.resolution.ArtifactRequest;
import org.eclipse.aether.resolution.ArtifactResolutionException;

/**
 * The data that came with another version of this plugin: a state of a folder whose project asks
 * for that version was made with them. They are had as Maven has every jar, from its repositories.
 */
final class FormerData {
  private static final String ENGINE = "dev.pellucid:pellucid-engine:";

  private final RepositorySystem system;
  private final RepositorySystemSession session;
  private final List<RemoteRepository> repositories;

  FormerData(
      RepositorySystem system,
      RepositorySystemSession session,
      List<RemoteRepository> repositories) {
    this.system = system;
    this.session = session;
    this.repositories = repositories;
  }

  /**
   * The data of a version.
   *
   * @return empty where it cannot be had
   * @throws IOException where its jar is not whole
   */
  Optional<Bundled> of(String version) throws IOException {
    Optional<File> jar = jar(version);
    if (jar.isEmpty()) {
      return Optional.empty();
    }
    try (JarFile files = new JarFile(jar.get())) {
      return Optional.of(
          Bundled.read(
              path ->
                  files.getJarEntry(path) == null
                      ? Optional.empty()
                      : Optional.of(files.getInputStream(files.getJarEntry(path)))));
    }
  }

  private Optional<File> jar(String version) {
    ArtifactRequest request =
        new ArtifactRequest(new DefaultArtifact(ENGINE + version), repositories, null);
    try {
      return Optional.ofNullable(system.resolveArtifact(session, request).getArtifact().getFile());
    } catch (ArtifactResolutionException | IllegalArgumentException gone) {
      return Optional.empty();
    }
  }
}
