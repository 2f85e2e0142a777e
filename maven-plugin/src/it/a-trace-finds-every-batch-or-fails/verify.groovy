String log = new File(basedir, 'build.log').text
assert log =~ /SALT-7: lot of salt \(Salt\), 50 kg came on 2026-01-02 from Saltworks/
// Through two premixes.
assert log =~ /MIX-1-2026-02-01-1  2026-02-01  not decided +10\.00  weighed in itself/
assert log =~ /MIX-2-2026-02-02-1  2026-02-02  not decided +4\.00  with MIX-1-2026-02-01-1/
assert log =~ /MIX-2-2026-02-03-1  2026-02-03  held +MIX-1: the lot of that line is not given, may be of MIX-1-2026-02-01-1/
assert log.contains('no lot or batch of this folder has the number SALT-8; did you mean SALT-7?')
assert log =~ /SALT-7 +salt +4\.00 +with MIX-1-2026-02-01-1/
assert log.contains('the trace may not be whole, fix these first: ') && log.contains('torn/batches/MIX-2-2026-02-03-1.yaml cannot be read')
assert log.contains('-Dpellucid.lot is empty; write a number behind it')
assert log.contains('NOT SEARCHED, so that this answer may not be whole')
assert !log.contains('Exception in thread') && !log.contains('at dev.pellucid')
return true
