File feeds = new File(basedir, 'my feeds')
feeds.mkdirs()
new File(feeds, 'notes.txt').text = 'mine'
new File(feeds, '.gitignore').text = '*.bak\n'
return true
