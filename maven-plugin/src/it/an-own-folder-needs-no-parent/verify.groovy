String log = new File(basedir, 'build.log').text
assert log.contains('1 recipe and 1 limit checked: 0 errors, 0 warnings, 0 notes')
// No day is fixed: the run has that of the clock.
assert (log =~ /pellucid: the day is (\S+)/).collect { java.time.LocalDate.parse(it[1]) }
    .every { java.time.temporal.ChronoUnit.DAYS.between(it, java.time.LocalDate.now()) <= 1 }
assert new File(basedir, 'target/batch-sheets/A-1.txt').exists()
return true
