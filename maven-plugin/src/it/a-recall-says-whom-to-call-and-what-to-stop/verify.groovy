String log = new File(basedir, 'build.log').text
// Much is hit, everything was searched: the build passes and says what to do.
assert log =~ /Hold it +2 batches, by the records/
assert log =~ /May hold it +1 batch, and no record can say/
assert log.contains('STOP: what must not leave, and must not be used')
assert log =~ /\{day: 2026-02-05, by: ____, decision: on-hold, because: SALT-7 is recalled\}/
assert log.contains('Alder Ponds: 2 bags, 2 kg with them by the books')
assert log =~ /MIX-2-2026-02-02-1  2026-02-04  delivered +2 +2  DN-7/
assert log =~ /MIX-2-2026-02-02-1  certain  +0\.1  shelf 2 +2027-02-02/
// A number that nobody knows, none at all, and a record that is torn: the build fails.
assert log.contains('no lot or batch of this folder has the number SALT-8; did you mean SALT-7?')
assert log.contains('say what is recalled: -Dpellucid.lot=NUMBER')
assert log.contains('THIS LIST MAY NOT BE WHOLE')
assert log.contains('the list may not be whole, fix these first: ') && log.contains('torn/batches/MIX-2-2026-02-03-1.yaml cannot be read')
assert !log.contains('Exception in thread') && !log.contains('at dev.pellucid')
['txt', 'html', 'json'].each {
  assert new File(basedir, "target/recall/recall.$it").text.contains('Alder Ponds')
  assert new File(basedir, "target/batch/recall.$it").text.contains('MIX-2-2026-02-02-1')
  assert new File(basedir, "target/torn/recall.$it").text.contains('SALT-7')
}
assert new File(basedir, 'target/recall/recall.html').text.contains('<svg')
return true
