String log = new File(basedir, 'build.log').text
// All feeds: the prices first, then a few lines for each.
assert log.contains('Prices: the oldest is 19 days old')
assert log.contains('of 2 feeds 1 can be cheaper, 1 was not asked; ')
assert log =~ /A-1  can be made for [0-9.]+ EUR\/t less, [0-9]+ EUR a month/
assert log.contains('  wheat 60.00 -> ')
assert log.contains('A-2  not asked: no two lines are free to change: write within 2 to 10 %')
assert log.contains('nothing was written into recipes; to write it: mvn pellucid:least-cost')
// A slip in a parameter: each in a sentence, and nothing is written.
assert log.contains('pellucid.move is 3; write above 0 and up to 100 points, as in "-Dpellucid.move=3 points"')
assert log.contains('ryye is no ingredient of this folder')
// Old prices: nothing is asked, and what to do is said.
assert log.contains('-Dpellucid.prices=any')
assert !new File(basedir, 'target/old/least-cost.txt').text.contains('+++ b/A-1.recipe')
// Written, and then there is nothing more to write.
assert log =~ /changed .*A-1\.recipe/
assert log.contains('next: mvn pellucid:check, mvn pellucid:compare -Dpellucid.feed=A-1, set status approved where you agree')
assert new File(basedir, 'target/again/least-cost.txt').text.contains('A-1 is the cheapest already')
assert (log =~ /changed .*A-1\.recipe/).count == 1
assert !log.contains('Exception in thread') && !log.contains('at dev.pellucid')
def run = { String... words ->
  new ProcessBuilder(words).directory(basedir).redirectErrorStream(true).start().inputStream.readLines('UTF-8')
}
List<String> diff = run('git', 'diff', '-U0', '--', 'A-1.recipe', 'A-2.recipe').findAll { it =~ /^[-+] / }
assert diff.size() == 2
assert diff[0] == '-  wheat                        60.00 %      within 20 to 80 %'
assert diff[1] =~ /^\+  wheat                        4[0-9]\.[0-9]{2} %      within 20 to 80 %$/
['txt', 'md', 'html', 'json'].each { assert new File(basedir, "target/one/least-cost.$it").text.contains('A-1') }
assert new File(basedir, 'target/least-cost/A-1.html').exists()
return true
