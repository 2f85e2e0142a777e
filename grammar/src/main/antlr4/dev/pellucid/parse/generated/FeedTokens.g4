/*
 * The words of Pellucid's files.
 *
 * A line is a row of runs between white space; only text in quotes may hold white space. Every run
 * is some token: one that is nothing else is OTHER, so no letter of a file is ever dropped and a
 * slip such as 1.0.2 or 14% stays one piece that a person recognises.
 *
 * Two tokens end a line, and say whether the next written line is indented or starts in column 1.
 * They swallow the comment at the end of their line, empty lines and lines of comment.
 */
lexer grammar FeedTokens;

COLUMN_ONE : LINE_REST+ (BLANK* REMARK? EOF)? | BLANK* REMARK EOF | BLANK+ EOF ;
INDENTED   : LINE_REST+ BLANK+ ;
SPACE      : BLANK+ -> skip ;

// Opening words
RECIPE : 'recipe' ;
PREMIX : 'premix' ;
PROFILE : 'profile' ;

// Sections
MIX : 'mix' ;
SUPPLY : 'supply' ;
CARRIER : 'carrier' ;
COAT : 'coat' ;
OVERAGE : 'overage' ;
LIMITS : 'limits' ;
WAIVERS : 'waivers' ;
PROCESS : 'process' ;
LABEL : 'label' ;

// Head lines
STATUS : 'status' ;
SPECIES : 'species' ;
FISH : 'fish' ;
HABIT : 'habit' ;
PLANT : 'plant' ;
MEETS : 'meets' ;
BATCH : 'batch' ;
DOSE : 'dose' ;
KIND : 'kind' ;
JURISDICTION : 'jurisdiction' ;
SOURCE : 'source' ;
HOLDS : 'holds' ;
MUST : 'must' ;
MATERIALS : 'materials' ;
REVIEWED : 'reviewed' ;

// Words inside lines
REST : 'rest' ;
REWORK : 'rework' ;
WITHIN : 'within' ;
OR : 'or' ;
NONE : 'none' ;
STEP : 'step' ;
TO : 'to' ;
FROM : 'from' ;
LINES : 'lines' ;
BELOW : 'below' ;
PER : 'per' ;
WEIGHING : 'weighing' ;
FOR : 'for' ;
INCLUSION : 'inclusion' ;
COST : 'cost' ;
MIN : 'min' ;
MAX : 'max' ;
ON : 'on' ;
DRY : 'dry' ;
MATTER : 'matter' ;
AT : 'at' ;
MOISTURE : 'moisture' ;
IN : 'in' ;
OF : 'of' ;
BATCHES : 'batches' ;
UNTIL : 'until' ;
BY : 'by' ;
BECAUSE : 'because' ;
ACCEPT : 'accept' ;
HOLD : 'hold' ;

COLON : ':' ;
PLUS : '+' ;

// Units that could also be a name or a code; 'min' is one more, above.
UNIT_WORD : 't' | 'kg' | 'g' | 'mg' | 'mm' | 'um' | 's' | 'h' | 'd' | 'month' | 'months'
          | 'C' | 'L' | 'l' ;
UNIT : '%' | 'g/kg' | 'mg/kg' | '\u00B5g/kg' | '\u03BCg/kg' | 'ug/kg'
     | 'IU/kg' | 'IU/g' | 'MJ/kg' | 'kJ/g' | 'kcal/kg' | 'g/MJ' | 'mg/kJ'
     | '\u00B5m' | '\u03BCm' | '\u00B0C' | '\u2103'
     | 'kg/L' | 'kg/l' | 'g/L' | 'g/l' | 'kg/m\u00B3' | 'kg/m3'
     | [A-Z] [A-Z] [A-Z] '/' ('kg' | 't') ;

NUMBER : DIGIT+ ('.' DIGIT+)? ;
DAY : DIGIT DIGIT DIGIT DIGIT '-' DIGIT DIGIT '-' DIGIT DIGIT ;
NAME : [a-z] [a-z0-9]* ('-' [a-z0-9]+)* ;
CODE : [A-Z] [A-Z0-9]* ('-' [A-Z0-9]+)* ;
QUOTED : '"' ~["\r\n]* '"' ;
OTHER : '"' ~["\r\n]* | '"' ~["\r\n]* '"' INK+ | INK+ ;

fragment DIGIT : [0-9] ;
fragment LINE_REST : BLANK* REMARK? ('\r' '\n'? | '\n') ;
fragment REMARK : '#' ~[\r\n]* ;
fragment BLANK : [ \t\p{Zs}] ;
fragment INK : ~[ \t\r\n\p{Zs}] ;
