String log = new File(basedir, 'build.log').text
assert log =~ /A-1\.recipe:4:3: error: crude-protein is 8\.5 %, the minimum is 9\.0 % \[below-minimum\]/
assert log =~ /B-1\.recipe:3:1: error: the lines add up to 99\.9 %, not to 100 % \[total-is-off\]/
assert log.contains('limits NOT CHECKED in B-1')
assert !log.contains('Exception in thread') && !log.contains('at dev.pellucid')

File reports = new File(basedir, 'target/check-reports')
String sarif = new File(reports, 'findings.sarif').text
assert sarif.contains('"ruleId": "below-minimum"') && sarif.contains('"uri": "A-1.recipe"')
String cases = new File(reports, 'limits-junit.xml').text
assert cases.contains('<failure type="below-minimum"') && cases.contains('<error type="total-is-off"')
assert new File(reports, 'summary.md').text.contains('| A-1.recipe:4 | crude-protein is 8.5 %')
assert reports.listFiles().every { !it.text.contains(basedir.path) && !it.text.contains('\r') }
return true
