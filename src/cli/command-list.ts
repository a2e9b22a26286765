import type { Call, Command } from "./arguments.js";
import type { Effects, ExitCode } from "./effects.js";

/** What a command's module exports. */
export interface CommandModule {
  readonly run: (call: Call, effects: Effects) => Promise<ExitCode>;
}

export interface LazyCommand extends Command {
  /** Loads the command's code; only the one that is called is loaded. */
  readonly load: () => Promise<CommandModule>;
}

const AS_OF_HELP = `  --as-of TIME     today, for what is due and what is released: 2026-06-20T12:00 in the
                   club's zone (default: as_of in shared/club.yaml, else the clock)`;

/** Every command, in the order of the help. A new command is one line here and one file in commands/. */
export const COMMANDS: readonly LazyCommand[] = [
  {
    name: "check", usage: "check [DIR] [--format text|json|github]", says: "read a log and list every problem in it",
    options: { format: { type: "string" } }, words: [0, 1], load: () => import("./commands/check.js"),
    help: `DIR is the log's folder (default: the current one).

  --format text    for people (default)
  --format json    a list of problems: code, severity, file, line, column, field,
                   expected, found, fix
  --format github  annotations of a GitHub workflow

Exit 0: no errors (warnings may be listed). Exit 1: errors.`,
  },
  {
    name: "build", usage: "build [DIR] [--out DIR] [--as-of TIME] [--keep-going] [--cold]", says: "make the site of a log",
    options: { out: { type: "string" }, "as-of": { type: "string" }, "keep-going": { type: "boolean" }, cold: { type: "boolean" } },
    words: [0, 1], load: () => import("./commands/build.js"),
    help: `DIR is the log's folder (default: the current one). The log is never written to.

  --out DIR        where the site goes (default: _site in the current folder). The folder
                   is replaced whole, at the end; until then the last site stays
${AS_OF_HELP}
  --keep-going     build what has no errors, and say what was left out
  --cold           forget kept charts and photos, and make all anew

A log with errors builds nothing and leaves the last good site as it was.`,
  },
  {
    name: "serve", usage: "serve [DIR] [--port N] [--as-of TIME]", says: "build, show in a browser, rebuild and reload on save",
    options: { port: { type: "string" }, "as-of": { type: "string" } }, words: [0, 1], load: () => import("./commands/serve.js"),
    help: `DIR is the log's folder (default: the current one). Only this machine can open the pages.

  --port N         first port to try (default: 8080); when it is taken, the next free one
${AS_OF_HELP}

Stop it with Ctrl-C.`,
  },
  {
    name: "sheets", usage: "sheets COMPETITION|BATCH [DIR] [--out DIR] [--as-of TIME]", says: "what a tasting or a competition needs on paper, and must not be published",
    options: { out: { type: "string" }, "as-of": { type: "string" } }, words: [1, 2], load: () => import("./commands/sheets.js"),
    help: `BATCH is a batch number, COMPETITION the name of its folder in shared/competitions/.
DIR is the log's folder (default: the current one). The log is never written to.

  --out DIR        where the sheets go, in a folder of the batch's or competition's name
                   (default: _private in the current folder). That folder is replaced
                   whole. Refused: any folder of a built site, and the log's own folders
${AS_OF_HELP}

A batch gives, for each tasting its record plans (one without results), the choice of
test with what so many tasters can find, a pouring sheet, a ballot a taster, and the key;
and slips for the bottles of its entries. A competition gives the registrar's list, pull
sheets, cup labels, a score sheet a judge and entry, flight and best-of-show sheets; once
scores are in, and not public, each entry's feedback.
Open index.html in a browser and print from there, on A4 or Letter.

Exit 1: the record, or a file all records share, has errors, or nobody can be found to judge
a flight who has no entry in it; nothing is written.`,
  },
  {
    name: "new", usage: "new log|batch|competition NAME", says: "write a commented starting point; never overwrites",
    options: {}, words: [2, 2], load: () => import("./commands/new.js"),
    help: `new log NAME          a folder NAME with a log in it
new batch NAME        batches/NAME/index.md in the log you are in
new competition NAME  shared/competitions/NAME/ in the log you are in

NAME is made of letters, digits and hyphens.`,
  },
  {
    name: "schema", usage: "schema", says: "print the JSON Schema of a batch record, for editors",
    options: {}, words: [0, 0], load: () => import("./commands/schema.js"),
    help: "Prints the schema of a record's front matter, so that an editor can complete and check fields.",
  },
];

/** The text of `gylebook --help`. */
export function overview(): string {
  const widest = Math.max(...COMMANDS.map(({ name }) => name.length));
  const lines = COMMANDS.map(({ name, says }) => `  ${name.padEnd(widest)}  ${says}`);
  return `gylebook turns a log of batch records into a site.

usage: gylebook COMMAND …

${lines.join("\n")}

gylebook COMMAND --help says more. --version prints the version.
Exit 0: fine. 1: problems in the log. 2: wrong usage, or a bug (--debug prints its stack).
`;
}

/** The text of `gylebook NAME --help`. */
export function commandHelp(command: Command): string {
  return `usage: gylebook ${command.usage}\n\n${command.says.charAt(0).toUpperCase()}${command.says.slice(1)}.\n\n${command.help}\n`;
}
