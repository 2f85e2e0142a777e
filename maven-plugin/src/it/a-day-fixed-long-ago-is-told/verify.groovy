List<String> builds = new File(basedir, 'build.log').text.split('Building feeds 1') as List
assert builds.size() == 4
assert builds[1] =~ /pellucid.yaml:1:1: warning: the day is 2001-02-03, which is \d+ days before today, /
assert builds[1].contains('use-by days count from a day far off')
assert builds[1].contains('0 errors, 1 warning, 0 notes')
assert builds[2].contains('0 errors, 0 warnings, 0 notes')
assert builds[3].contains('pellucid.day is 9999-12-31; a day is from 1900-01-01 to 2199-12-31')
return true
