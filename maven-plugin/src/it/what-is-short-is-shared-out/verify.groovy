String log = new File(basedir, 'build.log').text
// All is made; what is short is shared out, and what more of it is worth is told.
assert log.contains('All can be made: 3 t of 2 feeds; what is short is shared out so that all together cost least.')
assert log =~ /a tonne more of maize saves 100\.00 EUR\/t when it is bought at its price of 200\.00 EUR\/t/
assert log.contains('nothing was written into recipes; to write it: mvn pellucid:share-out -Dpellucid.plan=january -Dpellucid.write=true')
// Slips: each in a sentence, and nothing is written.
assert log.contains('januar is no plan of this folder; did you mean january?')
assert log.contains('A-1 is wanted by 2025-12-25, which is past on 2026-01-20')
assert log.contains('no batch of a feed is planned in batches/; name a plan with -Dpellucid.plan=january')
// Not enough: what cannot be made, and what it lacks.
String much = new File(basedir, 'target/much/share-out.txt').text
assert much.contains('Not all can be made: ')
assert much =~ /All could be made with more: about [0-9.]+ kg of maize\./
// Written, and the recipes pass.
assert log =~ /changed .*A-1\.recipe/
assert log.contains('next: mvn pellucid:check, mvn pellucid:compare, set status approved where you agree')
assert !log.contains('Exception in thread') && !log.contains('at dev.pellucid')
['txt', 'md', 'html', 'json'].each { assert new File(basedir, "target/share-out/share-out.$it").text.contains('A-1') }
assert new File(basedir, 'A-1.recipe').text =~ /wheat {24}[0-9]{2}\.[0-9]{2} % {6}within 20 to 80 %/
return true
