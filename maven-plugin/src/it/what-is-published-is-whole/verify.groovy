String group = 'dev.pellucid'
File repository = new File(localRepositoryPath, group.replace('.', '/'))
String licence = new File(basedir, '../../../../LICENSE').text

/** What Maven put on the class path of the plugin, from nothing but what is installed. */
Set<String> brought = (new File(basedir, 'build.log').text =~ /Included: +(\S+?):(\S+?):jar:(\S+)/)
    .collect { "${it[1]}:${it[2]} ${it[3]}".toString() } as Set
assert brought.size() > 10
assert brought.any { it.startsWith("$group:pellucid-engine ") }

String entry(File jar, String name) {
  new java.util.zip.ZipFile(jar).withCloseable { zip ->
    assert zip.getEntry(name) != null: "$jar.name has no $name"
    zip.getInputStream(zip.getEntry(name)).getText('UTF-8')
  }
}

Set<String> noticed(String notice) {
  (notice =~ /(?m)^\* .+ \((\S+:\S+)\) (\S+): (Apache-2\.0|BSD-3-Clause|MIT)$/)
      .collect { "${it[1]} ${it[2]}".toString() } as Set
}

['pellucid-grammar', 'pellucid-engine', 'pellucid-maven-plugin'].each { artifact ->
  // Another of these builds makes a version 0.0.9 up, and asks for one that is nowhere.
  File[] versions = new File(repository, artifact).listFiles({ it.directory && !it.name.startsWith('0.0.') } as FileFilter)
  assert versions.length == 1
  String name = "$artifact-${versions[0].name}"
  File jar = new File(versions[0], name + '.jar')
  assert entry(jar, 'META-INF/LICENSE') == licence
  String notice = entry(jar, 'META-INF/NOTICE')
  Set<String> told = noticed(notice)
  assert told.size() == notice.readLines().count { it.startsWith('* ') }
  assert brought.containsAll(told): "$artifact tells what it does not bring: ${told - brought}"
  if (artifact == 'pellucid-maven-plugin') {
    // Maven 3 gives plexus-utils 1.1 to every plugin that does not ask for it.
    Set<String> others = brought.findAll { !it.startsWith("$group:") } - 'org.codehaus.plexus:plexus-utils 1.1'
    assert others == told: "the notice lacks ${others - told}"
  }

  // What a public repository asks of a POM stands in it, and it needs no other POM.
  String text = new File(versions[0], name + '.pom').text
  def pom = new groovy.xml.XmlParser(false, false).parseText(text)
  assert !text.contains('${')
  assert pom.parent.isEmpty()
  assert pom.version.text() == versions[0].name
  ['name', 'description', 'url', 'inceptionYear'].each { assert pom[it].text().trim(): "$name: $it" }
  assert pom.licenses.license.name.text() == 'Apache-2.0'
  assert pom.licenses.license.url.text()
  assert pom.organization.name.text()
  assert pom.developers.developer.name.text()
  ['connection', 'developerConnection', 'url'].each { assert pom.scm[it].text(): "$name: scm $it" }
  assert pom.issueManagement.url.text()
  assert pom.dependencies.dependency.every { it.version.text() && it.scope.text() != 'test' }
}
assert !new File(repository, 'pellucid-recipes').exists()
return true
