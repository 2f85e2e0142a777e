assert new File(basedir, 'build.log').text.contains('no recipe was found to check')
return true
