String log = new File(basedir, 'build.log').text
assert log =~ /A-1\.recipe:4:3: error: crude-protein is 8\.5 %, the minimum is 9\.0 % \[below-minimum\]/
assert log =~ /B-1\.recipe:3:1: error: the lines add up to 99\.9 %, not to 100 % \[total-is-off\]/
assert log.contains('limits NOT CHECKED in B-1')
assert !log.contains('Exception in thread') && !log.contains('at dev.pellucid')
return true
