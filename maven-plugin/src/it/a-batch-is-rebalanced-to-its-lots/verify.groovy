String log = new File(basedir, 'build.log').text
assert log.contains('A-1-2026-01-21-1 misses 1 limit with its lots. ')
assert log.contains('W-1 for wheat: crude-protein 10.8 % (12 %)')
assert log.contains('nothing was written; to write it: mvn pellucid:rebalance -Dpellucid.batch=A-1-2026-01-21-1 -Dpellucid.write=true')
// A slip in the number: one sentence, and nothing is written.
assert log.contains('A-1-2026-01-21-2 is not the number of a batch of this folder; did you mean A-1-2026-01-21-1?')
// Written once, and then it is kept.
assert (log =~ /changed .*A-1-2026-01-21-1\.yaml/).count == 1
assert log.contains('A-1-2026-01-21-1 keeps every limit with its lots. Nothing is to be changed.')
String record = new File(basedir, 'batches/A-1-2026-01-21-1.yaml').text
assert record.startsWith('# Planned for the morning.\nsize: 100 kg\n\nrebalanced:\n  day: 2026-01-20\n  by: ____\n')
assert record =~ /    - \{line: wheat, share: 65\.[0-9]{2} %\}/
assert record.endsWith('\n\nweighed:\n  - {line: wheat, lot: W-1}\n')
String sheet = new File(basedir, 'target/batch-sheets/A-1-2026-01-21-1.txt').text
assert sheet.contains('re-balanced for lot W-1')
assert sheet.contains('nobody has signed for them')
assert !log.contains('Exception in thread') && !log.contains('at dev.pellucid')
return true
