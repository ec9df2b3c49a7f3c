// The words and signs of a procedure. Which words after a number are its unit is settled after this, in UnitWords.
lexer grammar InspectionLexer;

options {
    superClass = TextLexer;
}

channels {
    COMMENTS
}

tokens {
    // Put there by UnitWords: a whole unit, `mm per turn`.
    UNIT,
    // Put there by UnitWords: the `u` or `U` that states an uncertainty, `(u 0.2 K)`.
    STATED,
    // Put there by TextLexer: a text whose closing quote is missing on its line.
    UNCLOSED_STRING,
    // Put there by BareTexts: words that should be a text, without quotes.
    UNQUOTED,
    // Put there by Brackets: a comma between the arguments of a function, never one between options or limits.
    ARGUMENT_COMMA
}

// ---- words that begin a declaration ------------------------------------------------------------------------------
LANGUAGE: 'language';
PROCEDURE: 'procedure';
APPLIES: 'applies';
DECIDE: 'decide';
USE: 'use';
CARD: 'card';
HAZARD: 'hazard';
GAUGE: 'gauge';
SETUP: 'setup';
STAGE: 'stage';
OBSERVE: 'observe';
LET: 'let';
DEFINE: 'define';
CHECK: 'check';
FOR: 'for';
RELEASE: 'release';
REHEARSE: 'rehearse';

// ---- words that begin a clause -----------------------------------------------------------------------------------
AFTER: 'after';
WHEN: 'when';
WITH: 'with';
ASK: 'ask';
REQUIRE: 'require';
ADVISE: 'advise';
BECAUSE: 'because';
WHILE: 'while';

// ---- words of conditions
ANY: 'any';

// ---- words of expressions ----------------------------------------------------------------------------------------
IF: 'if';
THEN: 'then';
ELSE: 'else';
OR: 'or';
AND: 'and';
NOT: 'not';
AT: 'at';
BETWEEN: 'between';
WITHIN: 'within';
OF: 'of';
IS: 'is';
HAS: 'has';
IN: 'in';
TOLERATE: 'tolerate';
CHOOSE: 'choose';
OTHERWISE: 'otherwise';
YES: 'yes';
NO: 'no';
ENGINE: 'engine';
PER: 'per';

// ---- words that mean something in one place only, and are free to be names elsewhere: rule `name` lists them -------
ACCEPTANCE: 'acceptance';
ALL: 'all';
BEFORE: 'before';
BY: 'by';
CANNOT: 'cannot';
COUNTER: 'counter';
DIGITS: 'digit' 's'?;
DRAGS: 'drags';
ENTER: 'enter';
EXPECT: 'expect';
GAUGES: 'gauges';
GRADE: 'grade';
ITEMS: 'items';
LEAF: 'leaf';
LEAST: 'least';
MOST: 'most';
NOTE: 'note';
ONE: 'one';
OPTIONAL: 'optional';
PASSES: 'passes';
PIN: 'pin';
READING: 'reading';
REFUSES: 'refuses';
REVISION: 'revision';
SERIAL: 'serial';
SERIES: 'series';
SET: 'set';
SIMPLE: 'simple';
STARTS: 'starts';
TO: 'to';
VARIANT: 'variant';

// ---- signs -------------------------------------------------------------------------------------------------------
LBRACE: '{';
RBRACE: '}';
LPAREN: '(';
RPAREN: ')';
LBRACKET: '[';
RBRACKET: ']';
COLON: ':';
COMMA: ',';
ARROW: '->' | '\u2192';
FULL_STOP: '.';
PLUS: '+';
MINUS: '-' | '\u2212';
PLUS_MINUS: '\u00B1';
TIMES: '*' | '\u00D7';
DIVIDED_BY: '/' | '\u00F7';
TO_THE: '^';
NOT_MORE: '<=' | '\u2264';
NOT_LESS: '>=' | '\u2265';
LESS: '<';
GREATER: '>';
EQUALS: '=';
MIDDLE_DOT: '\u00B7' | '\u22C5';
PERCENT: '%';

// ---- numbers, texts, names ---------------------------------------------------------------------------------------
// Longer than the number it begins with, so that it is no difference of three.
DATE: DIGIT DIGIT DIGIT DIGIT '-' DIGIT DIGIT '-' DIGIT DIGIT;
NUMBER: DIGIT+ ('.' DIGIT+)? ([eE] [+\-\u2212]? DIGIT+)?;
STRING: '"' { readText(); };
NAME: LETTER (LETTER | DIGIT)*;
// A word that can only be a unit: °C, mm², µ alone is a letter.
UNIT_SIGN: ('\u00B0' | '\u2032' | '\u2033') [A-Za-z]* | LETTER (LETTER | DIGIT)* SUPERSCRIPT+;

COMMENT: '//' ~[\r\n]* -> channel(COMMENTS);
BLANK: [ \t\r\n\f\u00A0\u2009\u202F]+ -> skip;
// ---- signs of other languages, and anything else -------------------------------------------------------------------
// Each is reported; WordReading says what is meant.
FOREIGN: '==' | '!=' | '\u2260' | '!' | '<>' | '=<' | '=>' | '&&' | '||' | '**' | ':=' | '+-' | '+/-';
FOREIGN_COMMENT: ('#' | '-- ') ~[\r\n]* | '/*' .*? '*/';
CURLY_STRING: [\u201C\u201D\u201E\u00AB\u00BB\u2018\u2019\u201A'] { readCurlyText(); };
SEMICOLON: ';';
UNKNOWN: .;

fragment DIGIT: [0-9];
fragment LETTER: [\p{L}_];
fragment SUPERSCRIPT: [\u00B2\u00B3\u00B9\u2070\u2074-\u2079\u207B];
