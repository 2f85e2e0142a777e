String log = new File(basedir, 'build.log').text
assert log.contains('1 recipe and 1 limit checked: 0 errors, 0 warnings, 0 notes')
assert new File(basedir, 'target').list() == ['check-reports']
File reports = new File(basedir, 'target/check-reports')
assert (reports.list() as Set) == ['findings.sarif', 'findings-without-waived.sarif',
                                   'limits-junit.xml', 'findings.json', 'summary.md',
                                   'annotations.txt', 'code-quality.json'] as Set
assert new File(reports, 'limits-junit.xml').text.contains(
    '<testsuites name="feeds" tests="3" failures="0" errors="0">')
assert new File(basedir, 'A-1.recipe').text.endsWith('min 8 %\n')
return true
