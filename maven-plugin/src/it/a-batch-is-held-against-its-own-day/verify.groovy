String log = new File(basedir, 'build.log').text
// The recipe of today is below what it asks, the batch of the first commit was not.
assert log.contains('A-1.recipe:5:3: error: crude-protein is 8.5 %')
assert !log.contains('as made, crude-protein')
assert !log.contains('is not judged')
assert log.contains('weight of maize was changed from 60.00 kg to 60.01 kg since A-1-2026-11-18-1 was released')
assert !log.contains('Exception in thread') && !log.contains('at dev.pellucid')
return true
