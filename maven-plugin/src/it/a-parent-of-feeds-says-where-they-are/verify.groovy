String log = new File(basedir, 'build.log').text
assert log.contains('so it is no folder of feeds; below it is one, say which:')
assert log.contains('mvn pellucid:check -f recipes')
assert log.contains('A-1.recipe lies below it;')
assert log.contains('  jurisdiction: none')
assert log.contains('nothing to lay out')
assert log.contains('below-minimum\n[INFO] =============')
assert !log.contains('unknown-ingredient')
return true
