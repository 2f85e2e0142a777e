String log = new File(basedir, 'build.log').text
assert log.contains('-  maize   100 %')
assert log.contains('+  maize                        100 %')
assert log.contains('1 file of 1 not laid out; run: mvn pellucid:format')
assert new File(basedir, 'A-1.recipe').text.contains('  maize                        100 %\n')
return true
