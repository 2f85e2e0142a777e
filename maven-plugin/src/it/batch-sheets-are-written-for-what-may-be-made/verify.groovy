String log = new File(basedir, 'build.log').text
File sheets = new File(basedir, 'target/batch-sheets')
assert log.contains('1 batch sheet in ' + sheets)
assert log.contains('no sheet for B-1')
assert new File(sheets, 'A-1.txt').text.contains('60 kg; 60 kg in the bags')
// No commit holds the files of this build, so the sheet must say that it is a draft.
assert new File(sheets, 'A-1.txt').text.contains('DRAFT')
assert new File(sheets, 'A-1.txt').text.contains('made-from: {fingerprint: ')
assert new File(sheets, 'A-1.html').text.contains('Maize &amp; nothing else')
assert !new File(sheets, 'B-1.txt').exists()
assert log.contains('drafts, not to be made: A-1')
return true
