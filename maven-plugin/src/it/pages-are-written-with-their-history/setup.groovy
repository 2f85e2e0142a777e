// A repository of two commits: the second changes a price.
def git = { String... words ->
  def all = ['git', '-c', 'user.name=it', '-c', 'user.email=it@example.invalid', '-c', 'commit.gpgsign=false'] + words.toList()
  def run = new ProcessBuilder(all).directory(basedir).redirectErrorStream(true).start()
  String said = run.inputStream.text
  assert run.waitFor() == 0 : said
}
git('init', '-q')
git('add', '.')
git('commit', '-q', '-m', 'First recipe')
def prices = new File(basedir, 'prices/2026.yaml')
prices.text = prices.text.replace('maize: 0.20', 'maize: 0.25')
git('commit', '-q', '-a', '-m', 'Dearer maize')
return true
