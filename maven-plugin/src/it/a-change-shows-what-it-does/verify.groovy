String log = new File(basedir, 'build.log').text
assert log.contains('A-1  not touched, changed by its data')
assert log.contains('1 error is new; 1 feed changes, 1 limit is newly broken')
assert log.contains('A-1  not touched, changed by its data: 1 error is new (crude-protein is 7.5 %')
// One feed in full, asked for by its code.
assert log.contains('BROKEN crude-protein min 8 %: 8.500 -> 7.500')
assert log.contains('because of ingredients/maize.yaml')
assert log.contains('A-9 does not change, or is no code here')
assert log.contains('1 error is new, in A-1.recipe, line ')
assert log.contains('pellucid.failOnNew is grave; write error, warning, note or never')
assert log.contains('no-such-revision is neither a folder nor a revision that git knows here')
assert log.contains('no feed changes')
assert log =~ /maize +100\.000 +7\.5 % +100\.0 +test \(invented\)? *.*7\.500/
assert log.contains('A-2 is not the code of a recipe of this folder')
assert !log.contains('Exception in thread') && !log.contains('at dev.pellucid')
// A file of an earlier goal: the comparison of two commits came last.
assert new File(basedir, 'target/comparison/compare.md').text.contains('no feed changes')
assert log.contains('A-1: crude-protein falls by 11.76 %, allowed is 5 % without a waiver of a limit on it')
// Written before the build fails.
['txt', 'md', 'html', 'json'].each { assert new File(basedir, "target/far/compare.$it").text.contains('A-1') }
assert log.contains('pellucid.costRise is -1.0; write percent from 0 on')
return true
