import type { Severity } from "./problem.js";

/** What a message says besides its place: the noun phrase after "expected", and what to write instead. */
export interface Wording {
  readonly expected: string;
  readonly fix: string;
  /** Where what was found isn't simply the text at the place. */
  readonly found?: string;
}

/** One kind of problem: its title and explanation are printed in the help pages, its wording in messages. */
export interface CatalogueEntry<Given> {
  readonly severity: Severity;
  readonly title: string;
  readonly explanation: string;
  readonly wording: (given: Given) => Wording;
}

function error<Given = object>(title: string, explanation: string, wording: (given: Given) => Wording): CatalogueEntry<Given> {
  return { severity: "error", title, explanation, wording };
}

function warning<Given = object>(title: string, explanation: string, wording: (given: Given) => Wording): CatalogueEntry<Given> {
  return { severity: "warning", title, explanation, wording };
}

/** `expects` is the field's own phrase (`a mass such as "70 g"`), `example` the value in it. */
interface Field { readonly expects: string; readonly example: string }
interface Suggestion { readonly nearest: string | undefined; readonly known: string }

const orNearest = ({ nearest, known }: Suggestion, otherwise: string): string =>
  nearest !== undefined ? `Did you mean ${nearest}?` : known === "" ? otherwise : `Known here: ${known}. ${otherwise}`;

/**
 * Every problem the tool can find, and every wording, once. A code is permanent:
 * it may be retired, never given another meaning.
 */
export const CATALOGUE = {
  // The log's folder and its files
  "log/not-found": error("The log's folder can't be opened", "The path given doesn't lead to a folder that can be read.",
    () => ({ expected: "a folder that holds a log", fix: "Give the path of a folder that holds batches/, or make one: gylebook new log NAME" })),
  "log/empty": error("The folder is empty", "A log is a folder with a folder batches/ in it, one record a batch.",
    () => ({ expected: "a log: a folder batches/ with at least one record in it", fix: "Start one: gylebook new log NAME", found: "an empty folder" })),
  "log/no-batches": error("There is no folder batches/", "Records are kept in a folder called batches/ at the top of the log.",
    () => ({ expected: "a folder batches/ at the top of the log", fix: "Make the folder batches/ and put one Markdown file a batch in it, or give the path of the folder above batches/" })),
  "log/no-records": error("The folder batches/ holds no record", "A record is a Markdown file in batches/, or index.md in a folder of its own there.",
    () => ({ expected: "at least one record, batches/NAME.md or batches/NAME/index.md", fix: "Start one: gylebook new batch NAME" })),
  "log/file-unreadable": error("A file can't be read", "The system refused to hand the file over, or it changed while it was read.",
    ({ why }: { why: string }) => ({ expected: "a file that can be read", fix: "Check the file's permissions, or begin its name with _ to have it left out", found: why })),
  "log/link-outside": error("A link leads out of the log", "A log is read within its own folder only, so that it can be copied and trusted as it is.",
    () => ({ expected: "a file inside the log", fix: "Copy the file into the log instead of linking to it", found: "a link to a place outside the log" })),
  "log/file-unknown": warning("A file in shared/ that isn't read", "Shared files are known by name, so that a misspelt one isn't silently left out.",
    ({ nearest, known }: Suggestion) => ({ expected: `one of ${known}`, fix: nearest === undefined ? "Rename the file, or begin its name with _ to have it left out" : `Did you mean ${nearest}?` })),
  "log/folder-without-record": warning("A folder in batches/ holds no index.md", "In a batch's folder the record is called index.md; without one nothing in the folder is read.",
    ({ instead }: { instead: string }) => ({ expected: "a record called index.md in this folder", fix: instead })),
  "log/file-missing": error("A file named in a record isn't there", "Files are named relative to the record that mentions them, with forward slashes.",
    ({ nearest }: { nearest: string | undefined }) => ({ expected: "the name of a file in the log, relative to this record", fix: nearest === undefined ? "Put the file beside the record, or remove the line" : `Did you mean ${nearest}?` })),
  "log/path-outside": error("A file name leads out of the log", "A record may only name files inside its own log: no address, no path from the root, no way up past the top.",
    () => ({ expected: "the name of a file inside the log", fix: "Copy the file beside the record and write its bare name" })),
  "log/too-large": error("A file is larger than the tool reads", "Limits keep a damaged or hostile file from stopping the build.",
    ({ limit }: { limit: string }) => ({ expected: `no more than ${limit}`, fix: "Split it, or thin out the rows" })),
  "log/encoding": error("A file isn't UTF-8 text", "Every text file of a log is UTF-8, what editors on every system call plain Unicode text.",
    () => ({ expected: "text in UTF-8", fix: "Save the file again as UTF-8, without a byte-order mark", found: "bytes that aren't UTF-8" })),
  "log/byte-order-mark": error("A byte-order mark stands before the text", "Some Windows programs put an invisible mark at the start of a file. It would become part of the first word.",
    () => ({ expected: "text that begins with its first word", fix: "Save the file as \"UTF-8\", not \"UTF-8 with BOM\"", found: "a byte-order mark" })),

  // Front matter and YAML as such
  "record/front-matter-missing": error("A record doesn't begin with front matter", "A record is a Markdown file that begins with a line ---, then its fields in YAML, then a line ---.",
    () => ({ expected: "a first line of three hyphens, then title, batch and brewed", fix: "Begin the file with --- on a line of its own; or begin the file's name with _ if it isn't a record" })),
  "record/front-matter-open": error<{ found?: string }>("Front matter isn't closed", "The fields end with a line of exactly three hyphens; the notes come after it.",
    ({ found = "the end of the file" }) => ({ expected: "a line of exactly three hyphens after the fields", fix: "Put --- on a line of its own between the fields and the notes", found })),
  "record/front-matter-language": error("Front matter in another language than YAML", "Fields are written in YAML only. Other languages, and any that can run as a program, are refused unread.",
    () => ({ expected: "three hyphens alone on the first line, for YAML", fix: "Write --- alone on the line and the fields in YAML" })),
  "yaml/syntax": error("YAML that can't be read", "The text breaks a rule of YAML: mostly an indent, a missing space after a colon, or an unclosed quote or bracket.",
    ({ rule, fix }: { rule: string; fix: string }) => ({ expected: rule, fix })),
  "yaml/key-twice": error("The same field twice", "A field can be written once; the second would silently replace the first.",
    ({ key, line }: { key: string; line: number }) => ({ expected: `"${key}" once`, fix: `It is already on line ${line}: keep one of the two`, found: key })),
  "yaml/anchor": error("An anchor, alias or merge key", "Records are plain: no &anchor, *alias or <<. A text that begins with & or * needs quotes.",
    () => ({ expected: "plain values, without & anchors, * aliases or << merges", fix: "Write the values out; put a text that begins with & or * in quotes" })),
  "yaml/tag": error("A YAML tag", "Tags such as !!int change how a value is read. A text that begins with ! needs quotes.",
    () => ({ expected: "a plain value, without a ! tag", fix: "Remove the tag, or put a text that begins with ! in quotes" })),
  "yaml/too-deep": error("Fields nested too deeply", "No record needs more than a few levels; a limit keeps a hostile file from stopping the build.",
    ({ limit }: { limit: number }) => ({ expected: `no more than ${limit} levels of lists and fields`, fix: "Close the brackets that are left open, or remove the indents" })),
  "yaml/comma-in-text": error("A comma within braces", "Within braces a comma ends a value and begins the next field, so a text that holds one needs quotes.",
    ({ quoted }: { quoted: string }) => ({ expected: "name: value between the commas", fix: `Put a text that holds a comma in quotes: ${quoted}` })),
  "yaml/documents": error("More than one YAML document", "A file holds one set of fields; a line --- or ... within it would begin another.",
    () => ({ expected: "one set of fields", fix: "Remove the line --- or ... within the file" })),

  // Fields
  "record/field-unknown": error("A field that doesn't exist", "Fields are known by name, so that a misspelt one isn't silently lost.",
    ({ nearest, known }: Suggestion) => ({ expected: "a field known here", fix: nearest === undefined ? `Fields known here: ${known}` : `Did you mean ${nearest}? Fields known here: ${known}` })),
  "record/field-missing": error("A required field is missing", "Few fields are required: a record needs title, batch and brewed.",
    ({ expects, example, field }: Field & { field: string }) => ({ expected: expects, fix: `Add it: ${field}: ${example}`, found: "" })),
  "record/nothing": error("A field without a value", "Not recorded is written by leaving the field out; none is written as an empty list, [].",
    ({ expects, example }: Field) => ({ expected: expects, fix: `Write a value such as ${example}, or remove the line if it wasn't recorded`, found: "" })),
  "record/text": error("Text was expected", "The field holds one line or paragraph of text.",
    ({ expects, quoted }: { expects: string; quoted: string | undefined }) => ({ expected: expects, fix: quoted === undefined ? "Write text" : `Put it in quotes: ${quoted}` })),
  "record/list": error("A list was expected", "Lists are written [a, b] or one - a line.",
    ({ expects, example }: Field) => ({ expected: expects, fix: `Write a list: ${example}` })),
  "record/fields": error("Named fields were expected", "The field holds fields of its own, written indented below it or as {name: value}.",
    ({ expects, known }: { expects: string; known: string }) => ({ expected: expects, fix: known === "" ? "Write name: value, indented below it" : `Write the fields below it, indented: ${known}` })),
  "record/one-value": error("A single value was expected", "The field holds one value, not a list and not fields of its own.",
    ({ expects, example }: Field) => ({ expected: expects, fix: `Write one value: ${example}` })),
  "record/yes-no": error("Neither true nor false", "Yes and no are written true and false, without quotes.",
    () => ({ expected: "true or false", fix: "Write true or false, without quotes" })),
  "record/choice": error("Not one of the choices", "The field takes one of a few words.",
    ({ choices, nearest }: { choices: string; nearest: string | undefined }) => ({ expected: `one of ${choices}`, fix: nearest === undefined ? `Write one of: ${choices}` : `Did you mean ${nearest}?` })),
  "record/number": error("A number was expected", "The field is a bare number, with a decimal point where it needs one.",
    ({ expects, example }: Field) => ({ expected: expects, fix: `Write a number such as ${example}` })),
  "record/number-range": error("A number outside its range", "The number can't be right for this field.",
    ({ expects, low, high }: { expects: string; low: string; high: string }) => ({ expected: expects, fix: high === "" ? `Write a number of at least ${low}` : `Write a number from ${low} to ${high}` })),
  "record/whole-number": error("A whole number was expected", "The field counts things.",
    ({ expects }: { expects: string }) => ({ expected: expects, fix: "Write a whole number" })),
  "record/address": error("Not a web address", "An address begins with https:// or http://.",
    () => ({ expected: "a web address such as https://example.org/beer/", fix: "Write the whole address, from https:// on" })),
  "record/zone-unknown": error("A time zone that isn't known", "Zones are named by region and city, as in the IANA time zone database.",
    ({ nearest }: { nearest: string | undefined }) => ({ expected: "a time zone such as Europe/London", fix: nearest === undefined ? "Write the zone as Region/City" : `Did you mean ${nearest}?` })),

  // Quantities
  "record/unit-missing": error("A unit is missing", "A quantity is a number and a unit. Only specific gravity, pH, scores and counts are bare numbers.",
    ({ expects, repaired }: { expects: string; repaired: string }) => ({ expected: expects, fix: `Write the unit: ${repaired}` })),
  "record/unit-wrong-kind": error("A unit of the wrong kind", "The unit measures something else than the field asks for.",
    ({ expects, unit, kind, units }: { expects: string; unit: string; kind: string; units: string }) => ({ expected: expects, fix: `${unit} is a unit of ${kind}; write one of ${units}` })),
  "record/unit-unknown": error("A unit that isn't known", "Units are written as the record format lists them; capitals count.",
    ({ expects, nearest, units }: { expects: string; nearest: string | undefined; units: string }) => ({ expected: expects, fix: nearest === undefined ? `Write one of ${units}` : `Did you mean ${nearest}? Units here: ${units}` })),
  "record/decimal-comma": error("A decimal comma", "Decimals are written with a point, since a comma also separates values.",
    ({ expects, repaired }: { expects: string; repaired: string }) => ({ expected: `${expects}, with a decimal point`, fix: `Write a point: ${repaired}` })),
  "record/gravity-without-point": error("A gravity without its decimal point", "Specific gravity is written 1.048, not 1048.",
    ({ repaired }: { repaired: string }) => ({ expected: "a specific gravity between 0.980 and 1.200", fix: `Write the decimal point: ${repaired}` })),
  "record/out-of-range": error("A quantity outside its range", "The quantity can't be right for this field.",
    ({ between }: { between: string }) => ({ expected: between, fix: "Check the number and the unit" })),
  "record/negative": error("A quantity below zero", "Only temperatures and altitudes can be below zero.",
    ({ expects }: { expects: string }) => ({ expected: `${expects}, not below zero`, fix: "Remove the minus sign, or check the number" })),
  "record/temperature-not-allowed": error("A reading temperature where none belongs", "Only a volume or a gravity is read at a temperature.",
    ({ expects }: { expects: string }) => ({ expected: expects, fix: "Remove \"at\" and the temperature" })),
  "record/not-a-quantity": error("Not a quantity", "A quantity is a number, then a unit.",
    ({ expects, example }: Field) => ({ expected: expects, fix: `Write a number and a unit: ${example}` })),
  "record/range-backwards": error("A range that runs backwards", "A range is written low to high.",
    ({ repaired }: { repaired: string }) => ({ expected: "a range from low to high", fix: `Write the lower end first: ${repaired}` })),

  // Dates
  "record/date": error("Not a date", "Dates are written year-month-day, with a time after a space where it is known.",
    ({ expects }: { expects: string }) => ({ expected: expects, fix: "Write the date as 2026-03-18, or with a time as 2026-03-18 19:00" })),
  "record/date-impossible": error("A date or time that doesn't exist", "No calendar has that day, or no clock that time.",
    ({ why }: { why: string }) => ({ expected: "a date and time that exist", fix: why })),
  "record/hour-skipped": error("A time in an hour that was skipped", "When clocks go forward, an hour of that night doesn't exist in the club's zone.",
    ({ zone, next }: { zone: string; next: string }) => ({ expected: `a time that existed in ${zone}`, fix: `The clocks went forward over it; if the watch hadn't been set yet, write ${next}` })),

  // What must fit together within a record
  "record/removed-before-added": error("Hops removed before they went in", "Contact time runs from when hops are added to when they are removed.",
    ({ added }: { added: string }) => ({ expected: `a time after the addition at ${added}`, fix: "Correct added or removed, whichever is wrong" })),
  "record/removed-after-transfer": error("Hops removed after the beer had left", "`removed` is for hops taken out before the transfer; hops left behind need no `removed`.",
    ({ transfer }: { transfer: string }) => ({ expected: `a time before the transfer at ${transfer}`, fix: "Remove the line: contact ends with the transfer" })),
  "record/dry-hop-after-transfer": error("A dry hop into the fermenter after the transfer", "Once the beer has been moved on, the fermenter holds none to put hops into.",
    ({ transfer }: { transfer: string }) => ({ expected: `a time before the last transfer at ${transfer}`, fix: "Correct the time, or write into: keg if the hops went into the keg" })),
  "record/event-before-brew-day": error("Something happened before the brew day", "Nothing in a batch can happen before it was brewed.",
    ({ brewed }: { brewed: string }) => ({ expected: `a date from the brew day on, ${brewed}`, fix: "Correct this date or brewed, whichever is wrong" })),
  "record/events-out-of-order": error("Events in an order that can't be", "One of the two dates is wrong: the one can't come before the other.",
    ({ event, after, when }: { event: string; after: string; when: string }) => ({ expected: `${event} not before ${after} at ${when}`, fix: "Correct the date that is wrong" })),
  "record/dump-after-transfer": warning("A dump after the beer had left", "What is left in the vessel after the transfer is `transfer.left`; a dump after it would count the same beer twice.",
    ({ transfer }: { transfer: string }) => ({ expected: `a time before the last transfer at ${transfer}`, fix: "Write it as left under transfer, or correct the time" })),
  "record/more-out-than-in": error("More beer out than in", "Samples, dumps, what was left and what was moved or packaged can't add up to more than the fermenter held, beyond what the volumes' limits allow.",
    ({ into, within, sum }: { into: string; within: string; sum: string }) => ({ expected: `at most ${into} out, what went in, within ± ${within} for the readings`, fix: `Check the volumes: ${sum}` })),
  "record/raised-and-lowered": error("An attribute with two aims", "An attribute is to be raised, lowered or held: one of them.",
    ({ other }: { other: string }) => ({ expected: "each attribute under one of raise, lower and hold", fix: `It is also under ${other}: keep one` })),
  "record/purge-mixed": error("A purge in two ways at once", "A package is purged by liquid, with a pocket left, or by cycles at a pressure.",
    ({ by, field }: { by: string; field: string }) => ({ expected: `no ${field} where the purge is by ${by}`, fix: `Remove ${field}, or correct by` })),

  // What must fit together across a log
  "record/batch-twice": error("The same batch number twice", "A batch number names one batch of the log, and its page.",
    ({ other }: { other: string }) => ({ expected: "a batch number of its own", fix: `The same number is at ${other}: renumber one of the two` })),
  "record/batch-address": error("Two batch numbers that make the same page name", "Page names are made from the batch number's letters and digits.",
    ({ page, other }: { page: string; other: string }) => ({ expected: "a batch number whose page name is its own", fix: `${page} is already taken by ${other}: renumber one of the two` })),
  "record/batch-without-letters": error("A batch number without a letter or digit", "Page names are made from the batch number's letters and digits.",
    () => ({ expected: "a batch number with a letter or a digit, such as TP-03", fix: "Give the batch a number such as TP-03" })),
  "record/style-unknown": error("A style that isn't defined", "Styles come with the tool or from shared/styles.yaml.",
    (given: Suggestion) => ({ expected: "a style that is defined", fix: orNearest(given, "Add it to shared/styles.yaml") })),
  "record/equipment-unknown": error("Equipment that isn't defined", "Vessels and instruments are defined in shared/equipment.yaml.",
    (given: Suggestion) => ({ expected: "a name defined in shared/equipment.yaml", fix: orNearest(given, "Add it to shared/equipment.yaml") })),
  "record/repeats-unknown": error("A batch that isn't in the log", "`repeats` names the batch this one is compared with.",
    (given: Suggestion) => ({ expected: "the number of another batch in this log", fix: orNearest(given, "Write a batch number of this log") })),
  "record/competition-unknown": error("A competition that isn't in the log", "Competitions are folders in shared/competitions/.",
    (given: Suggestion) => ({ expected: "the name of a folder in shared/competitions/", fix: orNearest(given, "Add its folder to shared/competitions/") })),

  // Photos
  "photo/missing": error("A photo that isn't there", "Photos are files beside the record, named as they are on disk; capitals count.",
    ({ nearest }: { nearest: string | undefined }) => ({ expected: "a photo in the log", fix: nearest === undefined ? "Put the photo beside the record, or remove it from the notes" : `Did you mean ${nearest}?` })),
  "photo/outside": error("A photo outside the log", "Only photos inside the log are shown: no path from the root, no way up past the top, no link to elsewhere.",
    () => ({ expected: "a photo inside the log", fix: "Copy the photo beside the record and write its bare name" })),
  "photo/address": error("A photo on another site", "A page asks no other host for anything, so that it works without a network.",
    () => ({ expected: "a photo inside the log", fix: "Save the photo beside the record and write its bare name" })),
  "photo/kind": error("Not a kind of photo that is shown", "Photos are JPEG, PNG, WebP, AVIF or GIF files.",
    () => ({ expected: "a photo whose name ends in .jpg, .jpeg, .png, .webp, .avif or .gif", fix: "Save the picture as JPEG or PNG" })),
  "photo/without-words": warning("A photo without words", "Who can't see a photo is read what stands between its brackets; without words there is nothing to read.",
    () => ({ expected: "words between the brackets that say what the photo shows", fix: "Say in a few words what there is to see: ![Krausen up to the lid](krausen.jpg)" })),
  "photo/too-many": error("Too many photos in one record", "A limit keeps hostile notes from stopping the build.",
    ({ limit }: { limit: string }) => ({ expected: `no more than ${limit} photos in one record`, fix: "Leave some of them out" })),

  // CSV files as such
  "csv/empty": error("A CSV file without a header", "The first line names each column.",
    ({ columns }: { columns: string }) => ({ expected: `a first line that names the columns: ${columns}`, fix: `Begin the file with the line ${columns}`, found: "" })),
  "csv/semicolons": error("Semicolons between the columns", "Columns are separated by commas. Some spreadsheets write semicolons where the decimal sign is a comma.",
    ({ header }: { header: string }) => ({ expected: "columns separated by commas", fix: `Save it with commas between columns and points in numbers: ${header}` })),
  "csv/decimal-comma": error("A decimal comma in a CSV file", "Decimals are written with a point; a comma begins the next column.",
    ({ repaired }: { repaired: string }) => ({ expected: "numbers with a decimal point", fix: `Write a point: ${repaired}` })),
  "csv/quotes": error("A quote that isn't closed", "A cell that holds a comma or a quote stands in double quotes, and a quote inside it is doubled.",
    () => ({ expected: "a closing double quote", fix: "Close the quote; write a quote inside a quoted cell twice: \"\"" })),
  "csv/cells": error("A row with too many or too few cells", "Every row has one cell a column; an empty cell keeps its comma.",
    ({ columns }: { columns: string }) => ({ expected: `${columns}, as in the header`, fix: "Put a text that holds a comma in double quotes; keep the comma of an empty cell" })),
  "csv/column-missing": error("A column is missing", "The file's header must name this column.",
    ({ column }: { column: string }) => ({ expected: `a column "${column}"`, fix: `Add the column ${column} to the header and to each row` })),
  "csv/column-unknown": error("A column that isn't known", "Columns are known by name, so that a misspelt one isn't silently lost.",
    ({ nearest, known }: Suggestion) => ({ expected: `one of the columns ${known}`, fix: nearest === undefined ? "Remove the column, or correct its name" : `Did you mean ${nearest}?` })),
  "csv/column-twice": error("The same column twice", "Each column has a name of its own.",
    ({ column }: { column: string }) => ({ expected: `"${column}" once`, fix: "Rename or remove one of the two columns" })),
  "csv/column-unit": error("A column's unit", "The header names each column's unit in square brackets, or units: in the record names it.",
    ({ example, units }: { example: string; units: string }) => ({ expected: `a column with its unit, such as ${example}`, fix: `Write the unit after the name, one of ${units}: ${example}` })),
  "csv/cell-empty": error("A cell is empty", "This cell can't be left empty.",
    ({ expects, fix }: { expects: string; fix: string }) => ({ expected: expects, fix, found: "" })),
  "csv/number": error("A cell that isn't a number", "The cell is a bare number; its unit stands in the header.",
    ({ expects }: { expects: string }) => ({ expected: expects, fix: "Write a bare number with a decimal point, or leave the cell empty if it wasn't read" })),
  "csv/time": error("A cell that isn't a time", "Times are written 2026-03-18 19:00, or after the pattern that dates: gives in the record.",
    ({ pattern }: { pattern: string }) => ({ expected: `a date and time written ${pattern}`, fix: "Correct the cell, or give the file's own pattern as dates: in the record" })),
  "csv/time-backwards": error("Time runs backwards", "The rows of a log are in order of time.",
    ({ before }: { before: string }) => ({ expected: `a time not before ${before}, the row above`, fix: "Sort the rows by time, or correct the one that is wrong" })),
  "csv/more": error("Further problems in the same file", "Only the first problems of a file are listed one by one.",
    ({ count }: { count: string }) => ({ expected: "no further problems", fix: "Mend those listed first, then run the check again", found: `${count} more in this file` })),
  "log/dates-pattern": error("A date pattern that can't be used", "Patterns use the Unicode field symbols: y year, M month, d day, h or H hour, m minute, s second, a am or pm; other letters in single quotes.",
    ({ why }: { why: string }) => ({ expected: "a date pattern such as M/d/yyyy h:mm a", fix: why })),

  // Tastings
  "tasting/sample-unknown": error("A sample that isn't poured in this tasting", "Samples are named under samples: of the tasting, and used by those names.",
    (given: Suggestion) => ({ expected: "a sample of this tasting", fix: orNearest(given, "Add it under samples, or correct the name") })),
  "tasting/source-unknown": error("A sample from nowhere", "A sample is a kept sample, a package (keg, bottles or cask), or one of another batch: TP-02/keg.",
    (given: Suggestion) => ({ expected: "a kept sample, a package of this batch, or another batch's such as TP-02/keg", fix: orNearest(given, "Write where the sample was drawn from") })),
  "tasting/sample-reserved": error("A sample name that means something else", "A few words can't name a sample, because they name something else in a tasting.",
    () => ({ expected: "a sample name other than attribute, tasters and none", fix: "Give the sample another name, such as control" })),
  "tasting/samples-too-few": error("A tasting of fewer than two samples", "A comparison needs two samples.",
    () => ({ expected: "two samples or more", fix: "Name each glass under samples: {before: control, after: keg}" })),
  "tasting/count-above-tasters": error("More answers than tasters", "No more tasters can answer than took part.",
    ({ tasters }: { tasters: string }) => ({ expected: `at most ${tasters}, the tasters who took part`, fix: "Correct the count or tasters" })),
  "tasting/votes-do-not-sum": error("Votes that don't add up to the tasters", "Each taster gives one answer; where fewer took this test, tasters: inside it says how many.",
    ({ tasters }: { tasters: string }) => ({ expected: `answers that add up to ${tasters}, the tasters who took part`, fix: "Correct a count, or write tasters: inside the test if fewer took it" })),
  "tasting/score-outside": error("A score outside the scale", "Scores run from 0, none, to 10, as strong as it gets.",
    () => ({ expected: "a score from 0 to 10", fix: "Correct the score" })),
  "tasting/taster-twice": error("A taster twice on one sample", "One row a taster, sample and attribute; repeats are told apart by a column serving.",
    ({ line }: { line: number }) => ({ expected: "one row for this taster, sample and attribute", fix: `The other one is on line ${line}: remove one, or add a column serving with 1 and 2` })),
  "tasting/attribute-spelling": error("An attribute spelt two ways", "Two spellings would be counted as two attributes.",
    ({ other, field }: { other: string; field: string }) => ({ expected: `one spelling an attribute; ${field} has "${other}"`, fix: `Write ${other} in both places, or quite another name if another is meant` })),
  "tasting/attribute-similar": warning("Two attributes with nearly the same name", "If one is a slip of the other, each is counted on its own and looks weaker than it is.",
    ({ other, field }: { other: string; field: string }) => ({ expected: `one spelling an attribute; ${field} has "${other}"`, fix: `Did you mean ${other}? If both are meant, leave them` })),
  "tasting/attribute-unscored": error("The primary attribute was aimed at nowhere", "The primary attribute is one of those under raise, lower or hold.",
    (given: Suggestion) => ({ expected: "an attribute under raise, lower or hold", fix: orNearest(given, "Add it under raise, lower or hold") })),
  "tasting/rank": error("Ranks that don't run 1, 2, 3", "Each taster ranks every sample once, from 1 on; equal ranks share the mean of their places (1.5 and 1.5).",
    ({ sum }: { sum: string }) => ({ expected: `ranks of this taster that add up to ${sum}`, fix: "Give each sample a rank of its own, or equal ones the mean of their places" })),

  // Competitions
  "competition/code-unknown": error("A code that isn't in entries.csv", "Judges write the blind code of an entry; each is a row of entries.csv.",
    (given: Suggestion) => ({ expected: "a code of entries.csv", fix: orNearest(given, "Correct the code, or add the entry to entries.csv") })),
  "competition/code-twice": error("A code used twice", "A blind code stands for one entry.",
    ({ line }: { line: number }) => ({ expected: "a code of its own for each entry", fix: `The same code is on line ${line}: give one of the entries another` })),
  "competition/entry-twice": error("An entry registered twice", "Each registration id stands for one entry.",
    ({ line }: { line: number }) => ({ expected: "one row an entry", fix: `The same entry is on line ${line}: remove one of the two` })),
  "competition/two-flights": error("An entry in two flights", "An entry is judged in one flight.",
    ({ flight }: { flight: string }) => ({ expected: `flight ${flight}, where entries.csv has this entry`, fix: "Correct the flight or the code" })),
  "competition/flight-unknown": error("A flight without entries", "Flights are named in entries.csv.",
    (given: Suggestion) => ({ expected: "a flight of entries.csv", fix: orNearest(given, "Correct the flight's name") })),
  "competition/judge-unknown": error("A judge who isn't in judges.csv", "Every judge is a row of judges.csv.",
    (given: Suggestion) => ({ expected: "a judge of judges.csv", fix: orNearest(given, "Add the judge to judges.csv") })),
  "competition/judge-twice": error("A judge listed twice", "One row a judge; several flights are separated by ;.",
    ({ line }: { line: number }) => ({ expected: "one row a judge", fix: `The same judge is on line ${line}: join the flights with ; in one row` })),
  "competition/own-entry": error("A judge with an own entry in the flight", "Nobody judges a flight, or a round of best of show, that holds their own beer.",
    ({ entry, brewer }: { entry: string; brewer: string }) => ({ expected: "a flight without an entry of this judge's own", fix: `Entry ${entry} in it is by ${brewer}: move the judge or the entry to another flight` })),
  "competition/section-above": error("Points above the section's maximum", "Each section of the score sheet has its maximum in index.md.",
    ({ section, maximum }: { section: string; maximum: string }) => ({ expected: `0 to ${maximum} points for ${section}`, fix: "Correct the points, or the sheet in index.md" })),
  "competition/score-above": error("A score above the sheet's total", "The agreed score can't be more than all sections together.",
    ({ maximum }: { maximum: string }) => ({ expected: `a score from 0 to ${maximum}, all sections together`, fix: "Correct the score, or the sheet in index.md" })),
  "competition/total-differs": error("A total that isn't the sum of its sections", "A column total is optional; it catches a slip in copying a sheet.",
    ({ sum }: { sum: string }) => ({ expected: `${sum}, the sum of the sections`, fix: "Look at the paper again: correct a section or the total" })),
  "competition/judges-apart": warning("Judges further apart than agreed", "Where first scores are further apart than `agree_within`, the judges taste again and talk; what they decided belongs in finals.csv.",
    ({ apart, within, code }: { apart: string; within: string; code: string }) => ({
      expected: `first scores of cup ${code} within ${within} points, or a decision in finals.csv`, fix: `Write in decision of finals.csv how cup ${code} was settled`, found: `${apart} points apart` })),
  "competition/sheet-missing": warning("A score sheet is missing", "Every judge of a flight hands in a sheet for each of its entries.",
    ({ judge, codes }: { judge: string; codes: string }) => ({ expected: `a sheet by ${judge} for each entry of the flight that anybody scored`, fix: `Add the rows for ${codes}, or leave it if the judge didn't taste them`, found: `none for ${codes}` })),
  "competition/not-assigned": warning("A judge at a flight that isn't theirs", "judges.csv says which flights a judge sits at.",
    ({ judge, flights }: { judge: string; flights: string }) => ({ expected: `a flight of ${judge}: ${flights}`, fix: "Correct the judge or the flight, or add the flight in judges.csv" })),
  "competition/tie-open": warning("A tie without a decision", "Entries with the same agreed score share a place until someone writes down how it was settled.",
    ({ line, score }: { line: number; score: string }) => ({ expected: `a decision between two entries that both have ${score}`, fix: `The other one is on line ${line}: write in decision how it was settled, or leave both to share the place` })),
  "competition/place-against-score": warning("A place against the agreed scores", "A lower score before a higher one needs a decision.",
    ({ line, score }: { line: number; score: string }) => ({ expected: `a place behind line ${line}, which has ${score} points`, fix: "Correct the place or the score, or write in decision why" })),
  "competition/released-incomplete": warning("Results are due and not all in", "The release time is past, so whatever is recorded is shown.",
    ({ missing }: { missing: string }) => ({ expected: "an agreed score in finals.csv for every entry by the time of release", fix: "Fill in finals.csv, or move release to a later time", found: missing })),
  "competition/sheet-twice": error("Two score sheets by one judge for one entry", "One row a judge and entry.",
    ({ line }: { line: number }) => ({ expected: "one row a judge and code", fix: `The other one is on line ${line}: remove one of the two` })),
  "competition/final-twice": error("Two final scores for one entry", "One row an entry.",
    ({ line }: { line: number }) => ({ expected: "one row a code", fix: `The other one is on line ${line}: remove one of the two` })),
  "competition/rank-twice": error("A rank or code twice by one judge", "In best of show each judge gives each rank once and ranks each beer once.",
    ({ line, what }: { line: number; what: string }) => ({ expected: `each ${what} once a judge`, fix: `The same is on line ${line}: correct one of the two` })),
  "competition/batch-unknown": error("A batch that isn't in the log", "`batch` links an entry with a batch of this log; leave it empty for beers brewed elsewhere.",
    (given: Suggestion) => ({ expected: "a batch number of this log, or nothing", fix: orNearest(given, "Correct the number, or leave the cell empty") })),
  "competition/no-entries": error("A competition without entries", "Sheets are made from the entries in entries.csv.",
    () => ({ expected: "at least one row in entries.csv", fix: "Register the entries: one row each, with entry, style and brewer", found: "no entries" })),
  "competition/seed-missing": error("No seed to draw from", "Codes and flights that aren't recorded are drawn from `seed`, so that drawing again gives the same ones.",
    () => ({ expected: "seed: any word, as long as codes or flights are to be drawn", fix: "Add it to index.md, such as seed: harbour-2026; or write a code and a flight for each entry", found: "" })),
  "competition/codes-run-out": error("More entries than blind codes", "Three digits hold only so many codes that nobody misreads.",
    ({ most }: { most: string }) => ({ expected: `at most ${most} entries`, fix: "Split the competition in two folders, or write the codes in entries.csv yourself" })),
  "competition/entry-without-flight": error("An entry that fits in no flight", "Every flight recorded in judges.csv has a judge whose own entry this is.",
    ({ entries }: { entries: string }) => ({ expected: `a flight for ${entries} without its own brewer as judge`, fix: "Move a judge in judges.csv to another flight, or write the entry's flight yourself", found: "none" })),
  "competition/assignment-impossible": error("A flight that can't have two judges", "Nobody judges a flight that holds their own beer, and one judge alone is no judgement.",
    ({ flight, free, barred }: { flight: string; free: string; barred: string }) => ({
      expected: `two judges or more for flight ${flight} without an entry of their own in it`,
      fix: `Own entries keep from it: ${barred}. Ask another judge, or move an entry to another flight`, found: free })),
  "competition/folder-name": error("A competition's folder with a taken name", "The page of a competition has its folder's name, and index is the list of competitions.",
    () => ({ expected: "a folder whose page name is its own", fix: "index.html is the list of competitions: rename the folder, with the year in front for example" })),
  "competition/file-missing": error("A competition's file is missing", "A competition is a folder with index.md in it.",
    () => ({ expected: "a file index.md with name and date", fix: "Start one: gylebook new competition NAME", found: "" })),
};

/** Permanent code of a problem: `record/unit-missing`. */
export type ProblemCode = keyof typeof CATALOGUE;

/** What a wording needs to know. */
export type Given<Code extends ProblemCode> = Parameters<(typeof CATALOGUE)[Code]["wording"]>[0];

/** A kind of problem as the help page lists it; … stands for what depends on the record. */
export interface ProblemKind {
  readonly code: ProblemCode;
  readonly severity: Severity;
  readonly title: string;
  readonly explanation: string;
  readonly expected: string;
  readonly fix: string;
}

/** Every kind of problem, in the order of the catalogue. */
export function problemKinds(): ProblemKind[] {
  const anything = new Proxy({}, { get: () => "…" }) as never;
  return Object.entries(CATALOGUE).map(([code, entry]) => {
    const { severity, title, explanation, wording } = entry as CatalogueEntry<never>;
    const { expected, fix } = wording(anything);
    return { code: code as ProblemCode, severity, title, explanation, expected, fix };
  });
}
