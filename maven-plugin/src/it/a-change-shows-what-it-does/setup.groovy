// A repository of two commits: the second is layout alone. Then an analysis changes, not committed.
def git = { String... words ->
  def all = ['git', '-c', 'user.name=it', '-c', 'user.email=it@example.invalid', '-c', 'commit.gpgsign=false'] + words.toList()
  def run = new ProcessBuilder(all).directory(basedir).redirectErrorStream(true).start()
  String said = run.inputStream.text
  assert run.waitFor() == 0 : said
}
git('init', '-q')
git('add', '.')
git('commit', '-q', '-m', 'First recipe')
def recipe = new File(basedir, 'A-1.recipe')
recipe.text = recipe.text.replace('  maize                        100 %', '  maize   100 %')
git('commit', '-q', '-a', '-m', 'Lay it out')
def maize = new File(basedir, 'ingredients/maize.yaml')
maize.text = maize.text.replace('crude-protein: 8.5 %', 'crude-protein: 7.5 %')
return true
