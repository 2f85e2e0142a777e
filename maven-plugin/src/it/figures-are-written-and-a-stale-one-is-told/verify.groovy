String log = new File(basedir, 'build.log').text
// A warning, which by itself fails no build.
assert log.contains('A-1.figures:20:32: warning: crude-protein is now 8.500 %, the record says 8.700 %; ' +
                    '1 more line differs [figures-stale]')
assert log.contains('C-9.figures:1:1: warning: these figures have no recipe C-9 beside them [figures-without-recipe]')
assert log =~ /written .*A-1\.figures/
assert log =~ /its recipe is gone, delete it: .*C-9\.figures/
assert log.contains('pellucid: 1 record of figures written, 0 unchanged')
assert log.contains('pellucid: 0 records of figures written, 1 unchanged')
assert log.contains('A-2 is not the code of a recipe of this folder')
assert !log.contains('Exception in thread') && !log.contains('at dev.pellucid')
def git = new ProcessBuilder('git', 'diff', '-U0', '--', 'A-1.figures').directory(basedir).redirectErrorStream(true).start()
List<String> diff = git.inputStream.readLines('UTF-8').findAll { it =~ /^[-+] / }
assert diff == [
  '-  crude-protein                8.700 %',
  '+  crude-protein                8.500 %',
  '-  crude-protein                8.700 %      min 8 %                             kept, 0.700 points of room      A-1',
  '+  crude-protein                8.500 %      min 8 %                             kept, 0.500 points of room      A-1',
]
assert new File(basedir, 'C-9.figures').exists()
return true
