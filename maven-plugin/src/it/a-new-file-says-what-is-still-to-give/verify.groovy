String log = new File(basedir, 'build.log').text
assert log =~ /pellucid: ingredients\/lupin-meal.yaml written; in \d+ lines ____ stands for what is still to be given/
String lupins = new File(basedir, 'ingredients/lupin-meal.yaml').text
assert lupins.contains('crude-protein: ____ %  # usually 25 to 60 %')
assert log.contains('crude-protein is still to be given [data-to-be-given]')
assert log.contains('lupin-meal is there already, in ingredients/lupin-meal.yaml')
assert log.contains('nothing is asked for; write one of -Dpellucid.recipe=CODE')
assert log.contains('pellucid: practice/bounds.yaml written; nothing in it is still to be given')
assert new File(basedir, 'common-carp/B-2.recipe').text.contains('species   common-carp')
assert new File(basedir, 'batches/A-1-2027-03-31-1.yaml').text.contains('size: 60 kg')
assert !log.contains('Exception in thread') && !log.contains('at dev.pellucid')
return true
