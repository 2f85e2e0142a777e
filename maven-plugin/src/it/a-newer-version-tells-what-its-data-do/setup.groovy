import java.util.zip.ZipEntry
import java.util.zip.ZipFile
import java.util.zip.ZipOutputStream

// A version before this one, in which maize held less protein: its jar is the one of today but for that figure.
def engines = new File(localRepositoryPath, 'dev/pellucid/pellucid-engine')
def now = engines.listFiles().find { it.directory && !it.name.startsWith('0.0.') }
def today = new ZipFile(now.listFiles().find { it.name =~ /^pellucid-engine-.*\.jar$/ && !(it.name =~ /sources|javadoc|tests/) })
def before = new File(engines, '0.0.9')
before.mkdirs()
new File(before, 'pellucid-engine-0.0.9.pom').text = '''<project xmlns="http://maven.apache.org/POM/4.0.0">
  <modelVersion>4.0.0</modelVersion>
  <groupId>dev.pellucid</groupId>
  <artifactId>pellucid-engine</artifactId>
  <version>0.0.9</version>
</project>
'''
def jar = new ZipOutputStream(new FileOutputStream(new File(before, 'pellucid-engine-0.0.9.jar')))
today.entries().findAll { it.name.startsWith('dev/pellucid/bundled/') && !it.directory }.each { entry ->
  String text = today.getInputStream(entry).getText('UTF-8')
  jar.putNextEntry(new ZipEntry(entry.name))
  jar.write((entry.name.endsWith('/maize.yaml') ? text.replace('crude-protein: 8.75', 'crude-protein: 8.25') : text).getBytes('UTF-8'))
  jar.closeEntry()
}
jar.close()
today.close()

def git = { String... words ->
  def all = ['git', '-c', 'user.name=it', '-c', 'user.email=it@example.invalid', '-c', 'commit.gpgsign=false'] + words.toList()
  def run = new ProcessBuilder(all).directory(basedir).redirectErrorStream(true).start()
  String said = run.inputStream.text
  assert run.waitFor() == 0 : said
}
def pom = new File(basedir, 'pom.xml')
String asked = pom.text
def asks = { String version -> asked.replaceFirst(/<version>(?!1<)[^<]+<\/version>/, "<version>$version</version>") }
git('init', '-q')
pom.text = asks('0.0.8')
git('add', '.')
git('commit', '-q', '-m', 'With a version that is nowhere')
pom.text = asks('0.0.9')
git('commit', '-q', '-a', '-m', 'With the version before this one')
pom.text = asked
return true
