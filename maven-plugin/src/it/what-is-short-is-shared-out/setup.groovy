// Committed, so that a diff shows what the goal wrote.
def git = { String... words ->
  def all = ['git', '-c', 'user.name=it', '-c', 'user.email=it@example.invalid', '-c', 'commit.gpgsign=false'] + words.toList()
  def run = new ProcessBuilder(all).directory(basedir).redirectErrorStream(true).start()
  String said = run.inputStream.text
  assert run.waitFor() == 0 : said
}
git('init', '-q')
git('add', '.')
git('commit', '-q', '-m', 'First recipes')
return true
