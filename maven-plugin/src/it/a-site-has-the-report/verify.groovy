List<String> builds = new File(basedir, 'build.log').text.split('Building it 1') as List
assert builds.size() == 3
def version = (builds[1] =~ /site(?:-plugin)?:(\d+)\.(\d+)/)[0]
boolean older = version[1].toInteger() == 3 && version[2].toInteger() < 20
String pin = 'name version 3.21.0 of maven-site-plugin in pom.xml'
assert builds[1].contains(pin) == older
assert !builds[2].contains(pin)
builds[1..2].each {
  assert it.contains('3 pages about 1 feed') && it.contains('BUILD SUCCESS') && !it.contains('LinkageError')
}
File site = new File(basedir, 'target/site')
assert new File(site, 'pellucid/index.html').text.contains('feeds/A-1.html')
assert new File(site, 'pellucid/feeds/A-1.html').exists()
assert new File(site, 'project-reports.html').text.contains('pellucid/index.html')
return true
