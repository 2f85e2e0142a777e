List<String> builds = new File(basedir, 'build.log').text.split('Building feeds 1') as List
assert builds.size() == 4
def broken = { String path -> ~/(?m)^\[ERROR\] $path:4:3: error: crude-protein is 8\.5 %/ }
assert builds[1] =~ broken('mill/feeds/A-1.recipe')
assert builds[2] =~ broken('feeds/A-1.recipe')
assert builds[3].contains('which does not hold the folder') && builds[3].contains('name a folder that holds it')
assert !builds[3].contains('A-1.recipe') && !builds[3].contains('at dev.pellucid')

def named = { String reports, String path ->
  File folder = new File(basedir, reports)
  String sarif = new File(folder, 'findings.sarif').text
  assert sarif.contains('"uri": "' + path + '"') && !sarif.contains('"uri": "A-1.recipe"')
  assert new File(folder, 'findings.json').text.contains('"file": "' + path + '"')
  assert new File(folder, 'limits-junit.xml').text.contains('\n' + path + ':4:3: error: ')
  assert new File(folder, 'summary.md').text.contains('| ' + path + ':4 |')
  assert folder.listFiles().every { !it.text.contains(basedir.path) }
}
named('target/check-reports', 'mill/feeds/A-1.recipe')
named('target/below', 'feeds/A-1.recipe')
return true
