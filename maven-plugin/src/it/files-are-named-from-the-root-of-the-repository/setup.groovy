// The feeds lie two levels below the root of a repository.
def run = new ProcessBuilder('git', 'init', '-q').directory(basedir).redirectErrorStream(true).start()
String said = run.inputStream.text
assert run.waitFor() == 0 : said
return true
