// Types and lint of everything that is written here, from one reading of it: the rules that ask the compiler
// for a type find it worked out already. `npm run types` and `npm run lint` do the same one at a time.
import path from "node:path";
import { ESLint } from "eslint";
import ts from "typescript";

const ROOT = path.resolve(import.meta.dirname, "..");
const PLACES = { getCanonicalFileName: (file) => file, getCurrentDirectory: () => ROOT, getNewLine: () => "\n" };

function failOn(diagnostic) {
  throw new Error(ts.formatDiagnostic(diagnostic, PLACES));
}

/** The program that tsconfig.tests.json describes. */
function readProgram() {
  const place = path.join(ROOT, "tsconfig.tests.json");
  const { fileNames, options, errors } = ts.getParsedCommandLineOfConfigFile(place, { incremental: false }, { ...ts.sys, onUnRecoverableConfigFileDiagnostic: failOn });
  errors.forEach(failOn);
  return ts.createProgram(fileNames, options);
}

/** What is wrong with the types, as the compiler would print it. */
function listTypeErrors(program) {
  return ts.formatDiagnostics(ts.getPreEmitDiagnostics(program), PLACES);
}

/** What eslint.config.js finds, warnings too. */
async function listLint(program) {
  const eslint = new ESLint({ cwd: ROOT, overrideConfig: { files: ["**/*.{ts,tsx}"], languageOptions: { parserOptions: { programs: [program] } } } });
  const formatter = await eslint.loadFormatter("stylish");
  return formatter.format(await eslint.lintFiles(["."]));
}

const program = readProgram();
const found = [listTypeErrors(program), await listLint(program)].filter((text) => text.trim() !== "");
for (const text of found) console.log(text.trimEnd());
process.exitCode = found.length === 0 ? 0 : 1;
