// A repository whose configuration names a program, a link out of the project, and files to keep.
def git = { String... words ->
  def all = ['git', '-c', 'user.name=it', '-c', 'user.email=it@example.invalid', '-c', 'commit.gpgsign=false'] + words.toList()
  def run = new ProcessBuilder(all).directory(basedir).redirectErrorStream(true).start()
  String said = run.inputStream.text
  assert run.waitFor() == 0 : said
}
git('init', '-q')
git('add', '.')
git('commit', '-q', '-m', 'First recipe')
def program = new File(basedir, '.git/program')
program.text = "#!/bin/sh\necho ran > '${new File(basedir, 'mark')}'\ncat\n"
program.setExecutable(true)
git('config', 'core.fsmonitor', program.path)
git('config', 'tar.zip.command', program.path)
git('config', 'filter.evil.smudge', program.path)
git('config', 'filter.evil.clean', program.path)
new File(basedir, '.git/info/attributes').text = '*.recipe filter=evil\n'
new File(basedir, 'mark').delete()
new File(basedir, 'kept.txt').text = 'kept\n'
def outside = new File(basedir.parentFile, basedir.name + '-outside')
outside.mkdirs()
new File(outside, 'A-1.txt').text = 'kept\n'
java.nio.file.Files.createSymbolicLink(new File(basedir, 'led-away').toPath(), outside.toPath())
def recipe = new File(basedir, 'A-1.recipe')
recipe.text = recipe.text.replace('maize                        100 %', 'maize 100 %').replace('\n', '\r\n')
return true
