String log = new File(basedir, 'build.log').text
assert log.contains('the state before is computed with the data of version 0.0.9')
assert log.contains('A-1  not touched, changed by its data')
assert log.contains('because of pellucid:ingredients/maize.yaml')
assert log.contains('crude-protein 8.250 -> 8.750 %')
// A version that no repository has is told, and nothing is made up.
assert log.contains('the data of version 0.0.8 cannot be had, so both states are computed with those of version ')
assert new File(basedir, 'target/older/compare.txt').text.contains('no feed changes')
assert !log.contains('at dev.pellucid')
return true
