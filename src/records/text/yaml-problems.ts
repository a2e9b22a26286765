/** What the parser tells of a broken rule. */
export interface YamlComplaint {
  readonly code: string;
  readonly message: string;
}

interface Rule {
  readonly rule: string;
  readonly fix: string;
}

const COLON: Rule = { rule: 'one value after a colon', fix: 'Put a text that holds a colon and a space in quotes; begin each field on a line of its own, all at the same indent' };
const INDENT: Rule = { rule: "fields that belong together at the same indent", fix: "Indent them by the same number of spaces, and close every bracket" };

/** YAML's own complaints in the words of someone who writes a brewing log. */
const RULES: Readonly<Record<string, Rule>> = {
  BLOCK_AS_IMPLICIT_KEY: COLON,
  MULTILINE_IMPLICIT_KEY: { rule: "a field's name, a colon and a space on one line", fix: "Write name: value, with a space after the colon; indent a text that goes on" },
  BAD_INDENT: INDENT,
  TAB_AS_INDENT: { rule: "spaces before a field", fix: "Replace the tab by spaces" },
  MISSING_CHAR: { rule: "a closing quote or bracket, or a colon", fix: "Close what was opened; write a quote within a quoted text twice" },
  BAD_SCALAR_START: { rule: "a text in quotes where it begins with %, @ or `", fix: "Put the text in quotes" },
  BAD_DQ_ESCAPE: { rule: "no backslash in a text in double quotes", fix: "Use single quotes, or write the backslash twice" },
  UNEXPECTED_TOKEN: { rule: "a list or fields here, not both", fix: "Write name: value lines, or lines that begin with -, at one indent" },
  KEY_OVER_1024_CHARS: { rule: "a short field name before the colon", fix: "Put a long text that holds a colon in quotes" },
  BLOCK_IN_FLOW: { rule: "values separated by commas within brackets", fix: "Separate values by commas, and close every bracket" },
  COMMENT_SPACE: { rule: "a space before #", fix: "Put a space before a comment, or the text in quotes" },
};

const OTHER: Rule = { rule: "YAML that can be read", fix: "Write name: value lines, with lists as [a, b]" };

/** The rule that was broken and what to do about it. */
export function ruleOf(error: YamlComplaint): Rule {
  if (error.code === "UNEXPECTED_TOKEN" && error.message.includes("at node end")) {
    return { rule: "nothing after a closing quote or bracket", fix: "Put the whole text in quotes; within single quotes write an apostrophe twice: 'don''t'" };
  }
  if (error.code === "MISSING_CHAR" && error.message.includes("quote")) {
    return { rule: "a closing quote", fix: "Close the quote; within single quotes write an apostrophe twice: 'don''t'" };
  }
  return RULES[error.code] ?? OTHER;
}

/** Whether a complaint is about a quote that was never closed: it is then shown where it opens. */
export function isOpenQuote(error: YamlComplaint): boolean {
  return error.code === "MISSING_CHAR" && error.message.includes("quote");
}
