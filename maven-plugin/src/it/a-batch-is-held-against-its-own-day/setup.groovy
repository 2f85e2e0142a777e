// A batch of the first commit; the second asks more of the recipe; then a weight is changed that was released.
def git = { String... words ->
  def all = ['git', '-c', 'user.name=it', '-c', 'user.email=it@example.invalid', '-c', 'commit.gpgsign=false'] + words.toList()
  def run = new ProcessBuilder(all).directory(basedir).redirectErrorStream(true).start()
  String said = run.inputStream.text
  assert run.waitFor() == 0 : said
  said.trim()
}
git('init', '-q')
git('add', '.')
git('commit', '-q', '-m', 'First recipe')
String commit = git('rev-parse', '--short=10', 'HEAD')
def record = new File(basedir, 'batches/A-1-2026-11-18-1.yaml')
record.parentFile.mkdirs()
record.text = """size: 60 kg
made-from: {commit: ${commit}}
weighed:
  - {line: maize, weight: 60.00 kg}
release: {decision: released, by: lead}
"""
git('add', '.')
git('commit', '-q', '-m', 'A batch')
def recipe = new File(basedir, 'A-1.recipe')
recipe.text = recipe.text.replace('min 8 %', 'min 9 %')
git('commit', '-q', '-a', '-m', 'Ask for more')
record.text = record.text.replace('60.00 kg', '60.01 kg')
return true
