List<String> builds = new File(basedir, 'build.log').text.split('Building (?:\u001b\\[[0-9;]*m)*it 1') as List
assert builds.size() == 4
String colour = '\u001b\\[[0-9;]+m'
String plain = '\u001b\\[0?m'
// Where Maven colours its own lines, a finding has the same colours, and else none.
boolean painted = builds[1] =~ /\[${colour}ERROR/
String place = 'A-1\\.recipe:4:3'
String words = 'crude-protein is 8\\.5 %, the minimum is 9\\.0 %'
if (painted) {
  assert builds[1] =~ /$colour$place$plain: ${colour}error$plain: $words/
  assert builds[1] =~ /\| +$colour\^+ supplies 8\.5 of the 8\.5 points$plain/
} else {
  assert builds[1] =~ /$place: error: $words/
}
assert builds[2] =~ /\[ERROR\] $place: error: $words/
['check-reports', 'plain'].each { String reports ->
  assert new File(basedir, 'target/' + reports).listFiles().every { !it.text.contains('\u001b') }
}
File sarif = new File(basedir, 'target/plain/findings.sarif')
assert sarif.text =~ /"name": "Pellucid",\s+"version": "[0-9]+\.[0-9]+/ && !sarif.text.contains('helpUri')
assert builds[3].contains('pellucid.rulesAddress is rules; write a whole address')
return true
