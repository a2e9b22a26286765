import tseslint from "typescript-eslint";

/** A thing has one name, wherever it is imported. */
const BY_NAME = { selector: "ExportDefaultDeclaration", message: "Export by name, so that a thing is called the same everywhere." };
/** An enum is code where a type would do. */
const NO_ENUM = { selector: "TSEnumDeclaration", message: "Write the choices as a union of texts." };

// How code is written here. Each rule that isn't a preset's own says why.
// Default export: the tool asks for one.
export default tseslint.config(
  { ignores: ["dist/", "_site/", "_private/", "node_modules/", "coverage/", ".cache/", "src/site/assets/", "vitest.config.ts"] },
  {
    files: ["**/*.{ts,tsx}"],
    extends: [tseslint.configs.strictTypeChecked],
    languageOptions: { parserOptions: { project: "./tsconfig.tests.json", tsconfigRootDir: import.meta.dirname } },
    rules: {
      // Numbers and readings are what this program prints: `${volumeL} L` is meant.
      "@typescript-eslint/restrict-template-expressions": ["error", { allowNumber: true }],
      // An arrow that only calls reads better without braces.
      "@typescript-eslint/no-confusing-void-expression": ["error", { ignoreArrowShorthand: true }],
      "@typescript-eslint/consistent-type-imports": ["error", { fixStyle: "inline-type-imports", disallowTypeAnnotations: false }],
      // A text is spread by code points, which is what is wanted where it is done.
      "@typescript-eslint/no-misused-spread": ["error", { allow: ["string"] }],
      // A relation's parameters are its inputs, used or not.
      "@typescript-eslint/no-unused-vars": ["error", { argsIgnorePattern: "^_" }],
      // What these two look for can't be here: there is no enum, and a class has private fields, which the compiler
      // takes by name. They cost as much as all rules of the language together.
      "@typescript-eslint/no-unsafe-enum-assignment": "off",
      "@typescript-eslint/no-unsafe-class-instance-assignment": "off",
      "@typescript-eslint/switch-exhaustiveness-check": ["error", { considerDefaultExhaustiveForUnions: true }],
    },
  },
  {
    files: ["src/**/*.{ts,tsx}", "tests/**/*.ts", "scripts/**/*.mjs", "bench/**/*.mjs"],
    rules: {
      // A function is one idea; the habit is under 15 lines.
      "max-lines-per-function": ["error", { max: 60, skipBlankLines: true, skipComments: true }],
      "max-lines": ["error", { max: 250, skipBlankLines: true, skipComments: true }],
      // Counts every ?? and ?. too, and much here may be missing.
      complexity: ["error", 20],
      "max-depth": ["error", 4],
      "max-params": ["error", 7],
      "no-restricted-syntax": ["error", BY_NAME, NO_ENUM],
      eqeqeq: "error",
      "no-control-regex": "error",
      "no-useless-escape": "error",
      "no-console": "error",
      "no-var": "error",
      "prefer-const": "error",
      "object-shorthand": "error",
    },
  },
  {
    // A science file holds one relation and its descriptor.
    files: ["src/science/**/*.ts"],
    rules: { "max-lines": ["error", { max: 100, skipBlankLines: true, skipComments: true }] },
  },
  {
    files: ["tests/**/*.ts"],
    rules: {
      // A suite is a list of contracts, not a function to understand at once.
      "max-lines-per-function": "off",
      "max-lines": ["error", { max: 400, skipBlankLines: true, skipComments: true }],
      // Where a test is sure, a crash is a failed test.
      "@typescript-eslint/no-non-null-assertion": "off",
      // Types are checked by the compiler; of the rules that ask it once more, a test needs those
      // that keep a promise from being forgotten, since such a test passes whatever happens.
      ...tseslint.configs.disableTypeChecked.rules,
      "@typescript-eslint/no-floating-promises": "error",
      "@typescript-eslint/no-misused-promises": "error",
      "@typescript-eslint/await-thenable": "error",
      "@typescript-eslint/require-await": "error",
    },
  },
  {
    // A table of contents may be as long as what it lists; a catalogue of wordings is one list.
    files: ["src/**/index.ts", "src/problems/catalogue.ts"],
    rules: { "max-lines": "off" },
  },
  {
    // A tool asks for a default export, or a package has one.
    files: ["tests/closing-line.ts", "src/site/eleventy-package.d.ts"],
    rules: { "no-restricted-syntax": ["error", NO_ENUM] },
  },
  {
    // Programs for the terminal print.
    files: ["scripts/**/*.mjs", "bench/**/*.mjs"],
    rules: { "no-console": "off" },
  },
);
