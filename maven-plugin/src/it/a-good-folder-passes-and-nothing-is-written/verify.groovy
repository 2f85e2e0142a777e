String log = new File(basedir, 'build.log').text
assert log.contains('1 recipe and 1 limit checked: 0 errors, 0 warnings, 0 notes')
assert !new File(basedir, 'target').exists()
assert new File(basedir, 'A-1.recipe').text.endsWith('min 8 %\n')
return true
