package dev.pellucid.maven;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.maven.model.Model;
import org.apache.maven.model.Plugin;
import org.apache.maven.model.PluginContainer;
import org.apache.maven.model.io.xpp3.MavenXpp3Reader;
import org.codehaus.plexus.util.xml.pull.XmlPullParserException;

/** Which version of this plugin a project asks for, as its POM tells it. */
final class PluginVersion {
  private static final String GROUP = "dev.pellucid";
  private static final String PLUGIN = "pellucid-maven-plugin";
  private static final Pattern PROPERTY = Pattern.compile("\\$\\{([^}]+)}");

  private PluginVersion() {}

  /** The version; empty where the POM does not tell it, or no POM can be read. */
  static Optional<String> of(String pom) {
    try {
      Model model = new MavenXpp3Reader().read(new StringReader(pom));
      return containers(model).stream()
          .flatMap(container -> container.getPlugins().stream())
          .filter(PluginVersion::isThis)
          .flatMap(plugin -> Optional.ofNullable(plugin.getVersion()).stream())
          .flatMap(version -> plain(version.strip(), model).stream())
          .findFirst();
    } catch (IOException | XmlPullParserException torn) {
      return Optional.empty();
    }
  }

  private static List<PluginContainer> containers(Model model) {
    List<PluginContainer> containers = new ArrayList<>();
    if (model.getBuild() != null) {
      containers.add(model.getBuild());
      if (model.getBuild().getPluginManagement() != null) {
        containers.add(model.getBuild().getPluginManagement());
      }
    }
    return containers;
  }

  private static boolean isThis(Plugin plugin) {
    return PLUGIN.equals(plugin.getArtifactId()) && GROUP.equals(plugin.getGroupId());
  }

  /** A property of the same POM is looked up; one that comes from elsewhere is not known here. */
  private static Optional<String> plain(String version, Model model) {
    Matcher property = PROPERTY.matcher(version);
    if (!property.find()) {
      return Optional.of(version);
    }
    Properties properties = model.getProperties();
    return property.matches() && properties != null
        ? Optional.ofNullable(properties.getProperty(property.group(1)))
            .filter(value -> !PROPERTY.matcher(value).find())
        : Optional.empty();
  }
}
