String log = new File(basedir, 'build.log').text
assert log.contains('"--output=kept.txt" cannot be the name of a revision')
assert log.contains('no-such-branch is neither a folder nor a revision')
assert log.count('led-away leads out of its folder to ') == 5
['reports', 'sheets', 'pages', 'comparison', 'leastCost'].each {
  assert log.contains("take the link away, or name the folder itself with -Dpellucid.$it=...")
}
assert log =~ /annotations.txt was not written, .*what was there is as it was; see that the disk has room/
assert !log.contains('Exception in thread') && !log.contains('at dev.pellucid')
assert new File(basedir, 'kept.txt').text == 'kept\n'
def outside = new File(basedir.parentFile, basedir.name + '-outside')
assert outside.list() as List == ['A-1.txt'] && new File(outside, 'A-1.txt').text == 'kept\n'
assert !new File(basedir, 'mark').exists()
// Laid out, with its own line ends.
String recipe = new File(basedir, 'A-1.recipe').text
assert recipe.contains('maize                        100 %\r\n') && !recipe.replace('\r\n', '').contains('\n')
assert basedir.list().every { !it.endsWith('.half') }
return true
