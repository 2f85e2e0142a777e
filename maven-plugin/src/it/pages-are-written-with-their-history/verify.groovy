String log = new File(basedir, 'build.log').text
assert log.contains('3 pages about 1 feed')
assert log.contains('pellucid.history is -1; write a number from 0')
String feed = new File(basedir, 'target/pages/feeds/A-1.html').text
assert feed.contains('>0.2500<') && feed.contains('>0.2000<')
assert new File(basedir, 'target/pages/index.html').text.contains('feeds/A-1.html')
assert new File(basedir, 'target/no-history/feeds/A-1.html').text.contains('No other figures')
assert !log.contains('Exception in thread') && !log.contains('at dev.pellucid')
return true
