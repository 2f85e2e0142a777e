File feeds = new File(basedir, 'my feeds')
String log = new File(basedir, 'build.log').text
assert log.contains('a folder of feeds for nile-tilapia, prices in NGN, no law judged; ')
assert log.contains('left as it was: .gitignore')
assert log.contains('.gitignore has no line target/; add it')
assert log.contains('nothing was written, every file of a folder of feeds is there already')
// After each beginning, and once in the build.
assert (log =~ /1 recipe and \d+ limits checked: 0 errors, 0 warnings, 0 notes/).count == 3
assert new File(feeds, 'notes.txt').text == 'mine'
assert new File(feeds, '.gitignore').text == '*.bak\n'
String version = new File(localRepositoryPath, 'dev/pellucid/pellucid-maven-plugin').list().find { it ==~ /[0-9].*/ }
assert new File(feeds, 'pom.xml').text.contains("<pellucid.version>$version</pellucid.version>")
assert new File(feeds, 'pellucid.yaml').text.contains('\nname: "my feeds"\n')
assert new File(feeds, 'target/batch-sheets').list().findAll { it.endsWith('.html') }.size() == 3
assert log.contains('pellucid.species is salmon, and there is no starter feed for it; there are ')
assert (log =~ /there is no folder .+nowhere; make it, then run the goal again/).find()
assert !log.contains('Exception in thread')
return true
