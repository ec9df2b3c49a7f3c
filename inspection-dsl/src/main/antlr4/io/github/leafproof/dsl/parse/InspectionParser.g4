// The grammar of a procedure. It is kind on purpose: where a likely slip can be told from what is right only by more
// than the next word (a check without a title, a chain of comparisons), the grammar takes it and the builder says so.
// Before it, Brackets has made every bracket have its partner and UnitWords has joined each unit to one token.
parser grammar InspectionParser;

options {
    tokenVocab = InspectionLexer;
    superClass = BoundedParser;
    contextSuperClass = LeanContext;
}

// ---- declarations ------------------------------------------------------------------------------------------------
file: item* EOF;

item
    : LANGUAGE NUMBER                                           # language
    | PROCEDURE name NAME* text? (REVISION? NUMBER)?            # procedure
    | APPLIES WHEN expression                                   # applies
    | DECIDE AT amount                                          # decideAt
    | DECIDE BY SIMPLE ACCEPTANCE                               # decideSimply
    | USE text                                                  # use
    | CARD name COLON type                                      # card
    | HAZARD name text                                          # hazardText
    | GAUGE name COLON gaugeKind                                # gauge
    | SETUP name STARTS name setupBody                          # setup
    | STAGE text block                                          # stage
    | OBSERVE target COLON type observeClauses                  # observe
    | LET target EQUALS expression                              # let
    | DEFINE name LPAREN (parameter (COMMA parameter)*)? RPAREN EQUALS expression # define
    | CHECK target name* text? name* checkBody                  # check
    | FOR name IN name (COMMA name)* block                      # for
    | RELEASE releaseBody                                       # release
    | REHEARSE text rehearseBody                                # rehearse
    ;

block: LBRACE blockClause* RBRACE;

blockClause
    : AFTER targets                                             # blockAfter
    | item                                                      # blockItem
    ;

parameter: name COLON type;

gaugeKind
    : LEAF SET                                                  # leafSet
    | PIN SET                                                   # pinSet
    | READING OF type                                           # readingOf
    | COUNTER                                                   # counter
    ;

// ---- bench states ------------------------------------------------------------------------------------------------
setupBody: LBRACE setupLine* RBRACE;

setupLine
    : WHILE name hazards                                        # whileState
    | name ARROW name text hazards?                             # change
    ;

hazards: HAZARD name (COMMA name)*;

// ---- observations ------------------------------------------------------------------------------------------------
observeClauses: observeClause*;

observeClause
    : WITH name                                                 # withGauge
    | SETUP state (COMMA state)*                                # needsStates
    | ASK text                                                  # ask
    | hazards                                                   # carriesHazards
    | NOTE text                                                 # note
    | OPTIONAL                                                  # optional
    | WHEN expression                                           # observeWhen
    ;

state: name name;

// ---- checks ------------------------------------------------------------------------------------------------------
checkBody: LBRACE checkClause* RBRACE;

checkClause
    : AFTER targets                                             # checkAfter
    | WHEN expression                                           # checkWhen
    | REQUIRE expression                                        # require
    | AT amount                                                 # checkConfidence
    | IF name ADVISE expression                                 # advise
    | BECAUSE text                                              # because
    ;

// ---- release of the engine ---------------------------------------------------------------------------------------
releaseBody: LBRACE releaseRule* RBRACE;

releaseRule
    : name WHEN condition                                       # ruleWhen
    | name OTHERWISE                                            # ruleOtherwise
    ;

condition: both ((COMMA | OR) both)*;

both: atom (AND atom)*;

atom
    : ANY severity=name? outcomes                               # anyCheck
    | target outcomes                                           # oneCheck
    ;

outcomes: name (OR name)*;

// ---- rehearsals --------------------------------------------------------------------------------------------------
rehearseBody: LBRACE step* RBRACE;

step
    : ENGINE text (VARIANT text)? (SERIAL text)?                # engineStep
    | GAUGES text                                               # gaugesStep
    | ENTER entry (COMMA entry)*                                # enterStep
    | EXPECT expectation (COMMA expectation)*                   # expectStep
    ;

expectation
    : RELEASE name                                              # expectRelease
    | target word                                               # expectCheck
    ;

entry: target entered;

entered
    : trial+                                                    # trials
    | ITEMS text (COMMA text)*                                  # items
    | SERIES signed (COMMA signed)*                             # readings
    | CANNOT text                                               # cannot
    | signed                                                    # enteredAmount
    | DATE                                                      # enteredDate
    | text                                                      # enteredText
    | (YES | NO | word)                                         # enteredWord
    ;

trial: (PASSES | REFUSES | DRAGS) text;

// ---- types -------------------------------------------------------------------------------------------------------
type
    : YES DIVIDED_BY NO                                         # yesNoType
    | ONE OF option (COMMA option)*                             # oneOfType
    | GRADE option (LESS option)*                               # gradeType
    | SERIES OF typeWords                                       # seriesType
    | typeWords                                                 # namedType
    ;

typeWords: (NAME | ITEMS) (NAME | PER)*;

// ---- expressions, the loosest first ------------------------------------------------------------------------------
expression
    : NOT expression                                            # not
    | expression AND expression                                 # and
    | expression OR expression                                  # or
    | IF expression THEN expression ELSE expression             # ifElse
    | comparison                                                # compared
    ;

comparison: value comparing*;

comparing
    : AT (LEAST | MOST) value tolerate?                         # atLimit
    | BETWEEN value AND value tolerateBoth?                       # between
    | WITHIN value OF value tolerate?                           # within
    | IS NOT? (BEFORE | AFTER) value                            # inTime
    | IS (ONE OF option (COMMA option)* | NOT? value)           # is
    | HAS ALL OF value                                          # hasAllOf
    | (NOT_MORE | NOT_LESS | LESS | GREATER | EQUALS) value        # sign
    ;

tolerate: TOLERATE TO value;

tolerateBoth: TOLERATE TO value (COMMA value)?;

value: sum (IN UNIT)?;

sum
    : primary uncertainty?                                      # plain
    | <assoc=right> sum TO_THE sum                              # power
    | MINUS sum                                                 # negated
    | sum (TIMES | DIVIDED_BY) sum                              # product
    | sum (PLUS | MINUS) sum                                    # addition
    ;

// How well the value before it is known.
uncertainty
    : PLUS_MINUS signed                                         # limits
    | LPAREN STATED EQUALS? signed (ARGUMENT_COMMA coverage)? RPAREN # stated
    ;

coverage: name EQUALS? signed;

primary
    : amount                                                    # number
    | PLUS_MINUS signed                                         # limitsOfNothing
    | DATE                                                      # date
    | text                                                      # quoted
    | (YES | NO)                                                # yesNo
    | ENGINE FULL_STOP name (FULL_STOP name)*                   # engineFact
    | name LPAREN (expression (ARGUMENT_COMMA expression)*)? RPAREN # call
    | target                                                    # reference
    | LPAREN expression RPAREN                                  # inParentheses
    | CHOOSE expression arms                                    # choose
    ;

arms: LBRACE arm* RBRACE;

arm
    : OTHERWISE COLON expression                                # otherwiseArm
    | option (COMMA option)* COLON expression                   # optionArm
    ;

// A hole of a text: {x in thou, 1 digit}
hole: expression (COMMA NUMBER DIGITS)? EOF;

// What stands by itself, outside of any procedure: lash = 4.5 thou in mm
line: (name EQUALS)? expression EOF;

// ---- small things ------------------------------------------------------------------------------------------------
targets: target (COMMA target)*;

target: name (LBRACKET name RBRACKET)*;

option: name | text;

amount: NUMBER UNIT?;

signed: MINUS? amount;

text: STRING | UNCLOSED_STRING | UNQUOTED | CURLY_STRING;

name
    : NAME | ACCEPTANCE | ALL | BEFORE | BY | CANNOT | COUNTER | DIGITS | DRAGS | ENTER | EXPECT | GAUGES | GRADE | ITEMS
    | LEAF | LEAST | MOST | NOTE | ONE | OPTIONAL | PASSES | PIN | READING | REFUSES | REVISION | SERIAL | SERIES | SET
    | SIMPLE | STARTS | TO | VARIANT
    ;

// A name that is not the beginning of the next step: an option of that name stands in quotes.
word
    : NAME | ACCEPTANCE | ALL | BEFORE | BY | CANNOT | COUNTER | DIGITS | DRAGS | GRADE | ITEMS | LEAF | LEAST | MOST | NOTE | ONE
    | OPTIONAL | PASSES | PIN | READING | REFUSES | REVISION | SERIAL | SERIES | SET | SIMPLE | STARTS | TO | VARIANT
    ;
