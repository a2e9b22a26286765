import tseslint from "typescript-eslint";

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
      // A thing has one name, wherever it is imported.
      "no-restricted-syntax": ["error", { selector: "ExportDefaultDeclaration", message: "Export by name, so that a thing is called the same everywhere." }],
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
    rules: { "no-restricted-syntax": "off" },
  },
  {
    // Programs for the terminal print.
    files: ["scripts/**/*.mjs", "bench/**/*.mjs"],
    rules: { "no-console": "off" },
  },
);
