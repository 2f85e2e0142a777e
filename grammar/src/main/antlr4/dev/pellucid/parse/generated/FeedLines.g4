/*
 * The lines of Pellucid's files. recipeFile, premixFile and profileFile say what a whole file is;
 * the reader calls the rule of each line by itself, so that no line can cost another.
 *
 * A word of the language is one only in its place: see word.
 */
parser grammar FeedLines;

options { tokenVocab = FeedTokens; }

recipeFile
  : COLUMN_ONE? opening (INDENTED headLine)* (COLUMN_ONE recipeSection)* COLUMN_ONE? EOF
  ;

premixFile
  : COLUMN_ONE? opening (INDENTED headLine)* (COLUMN_ONE premixSection)* COLUMN_ONE? EOF
  ;

profileFile
  : COLUMN_ONE? opening (INDENTED headLine)* (COLUMN_ONE limits)* COLUMN_ONE? EOF
  ;

recipeSection
  : (MIX | COAT) (INDENTED shareLine)*
  | OVERAGE (INDENTED overageLine)*
  | limits
  | WAIVERS (INDENTED waiverLine)*
  | PROCESS (INDENTED processLine)*
  | LABEL (INDENTED labelLine)*
  ;

premixSection
  : (MIX | CARRIER) (INDENTED shareLine)*
  | SUPPLY (INDENTED supplyLine)*
  | OVERAGE (INDENTED overageLine)*
  | PROCESS (INDENTED processLine)*
  ;

limits
  : LIMITS (INDENTED limitLine)*
  ;

opening
  : keyword=(RECIPE | PREMIX | PROFILE) name=word title=QUOTED?
  ;

headLine
  : key=STATUS value=word behind=review?
  | key=(SPECIES | HABIT | PLANT | MEETS | KIND | JURISDICTION | SOURCE | MATERIALS)
    value=word
  | key=FISH mass=range
  | key=BATCH figure=amount weight=word
  | key=DOSE figure=amount
  | key=HOLDS count=NUMBER LIMITS
  | key=MUST HOLD value=word
  ;

review
  : REVIEWED BY by=QUOTED ON day=(DAY | OTHER)
  ;

shareLine
  : rework=REWORK? subject=word (stated=amount | rest=REST) phrases+=sharePhrase*
  ;

sharePhrase
  : WITHIN within=range none=orNone?
  | STEP step=amount
  ;

orNone
  : OR NONE
  ;

supplyLine
  : nutrient=word figure=amount FROM from=word
  ;

overageLine
  : lines=target extra=amount (PER weighing=WEIGHING)? FOR purpose=word
  ;

target
  : LINES BELOW share=amount
  | name=word
  ;

limitLine
  : what=left phrases+=limitPhrase*
  ;

limitPhrase
  : limit=bound
  | on=basis
  | SOURCE source=word
  | IN confidence=amount OF BATCHES
  ;

waiverLine
  : what=left phrases+=waiverPhrase*
  ;

waiverPhrase
  : limit=bound
  | on=basis
  | UNTIL until=(DAY | OTHER)
  | BY by=QUOTED
  | BECAUSE because=QUOTED
  ;

left
  : inclusion=INCLUSION over=sum
  | cost=COST
  | over=sum (COLON under=sum)?
  ;

sum
  : names+=word (PLUS names+=word)*
  ;

bound
  : side=(MIN | MAX) number=NUMBER unit=(UNIT | UNIT_WORD)?
  ;

basis
  : ON DRY MATTER
  | AT moisture=amount MOISTURE
  ;

processLine
  : first=word second=word (third=word fourth=word?)? (figure=amount | between=range)?
    (ACCEPT accept=range)?
  ;

labelLine
  : nutrient=word (declared=amount | guaranteed+=bound+)
  ;

// Before a number 'min' is a bound, after one it is the minute. No amount stands before a bound.
amount
  : number=NUMBER unit=(UNIT | UNIT_WORD | MIN)
  ;

range
  : low=NUMBER TO high=NUMBER unit=(UNIT | UNIT_WORD | MIN)
  ;

word
  : NAME | CODE | UNIT_WORD
  | RECIPE | PREMIX | PROFILE
  | MIX | SUPPLY | CARRIER | COAT | OVERAGE | LIMITS | WAIVERS | PROCESS | LABEL
  | STATUS | SPECIES | FISH | HABIT | PLANT | MEETS | BATCH | DOSE | KIND | JURISDICTION | SOURCE
  | REST | WITHIN | OR | NONE | STEP | TO | FROM | LINES | BELOW | PER | WEIGHING | FOR
  | INCLUSION | COST | MIN | MAX | ON | DRY | MATTER | AT | MOISTURE | IN | OF | BATCHES | UNTIL | BY | BECAUSE
  | REVIEWED | ACCEPT | REWORK | HOLDS | MUST | HOLD | MATERIALS
  ;
