// A record of an older analysis, and one whose recipe is gone, are committed.
def git = { String... words ->
  def all = ['git', '-c', 'user.name=it', '-c', 'user.email=it@example.invalid', '-c', 'commit.gpgsign=false'] + words.toList()
  def run = new ProcessBuilder(all).directory(basedir).redirectErrorStream(true).start()
  String said = run.inputStream.text
  assert run.waitFor() == 0 : said
}
git('init', '-q')
git('add', '.')
git('commit', '-q', '-m', 'First recipe')
return true
