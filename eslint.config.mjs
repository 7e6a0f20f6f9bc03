import tseslint from "typescript-eslint";

/** Arrows point one way: src -> functions -> shared. Nothing below src knows that a host exists. */
const mayNotImport = (folders, ...otherPatterns) => ({
  "no-restricted-imports": [
    "error",
    {
      patterns: [
        {
          regex: `^(\\.\\./)+(${folders.join("|")})(/|$)`,
          message: "Arrows point one way: src -> functions -> shared.",
        },
        ...otherPatterns,
      ],
    },
  ],
});

const noHost = ["Office", "Excel", "CustomFunctions", "window", "document", "process", "console", "fetch"];

const NOT_TWICE_THE_SAME = "A function must answer the same the second time.";

/** What holds in both folders below src: no host, no package but decimals and hashes, and nothing that differs from one call to the next. */
const belowSrc = (folders) => ({
  ...mayNotImport(folders, {
    regex: "^(?!(?:big\\.js|@noble/hashes/(?:sha2|utils))$)[^.]",
    message: "Below src only our own files are imported, and the libraries of decimals and of hashes.",
  }),
  "no-restricted-globals": ["error", ...noHost],
  "no-restricted-properties": [
    "error",
    { object: "Date", property: "now", message: NOT_TWICE_THE_SAME },
    { object: "Math", property: "random", message: NOT_TWICE_THE_SAME },
  ],
  "no-restricted-syntax": [
    "error",
    // `Date()` without `new` ignores its arguments and gives the time of the call.
    { selector: "NewExpression[callee.name='Date'][arguments.length=0]", message: NOT_TWICE_THE_SAME },
    { selector: "CallExpression[callee.name='Date']", message: NOT_TWICE_THE_SAME },
    // The rule on imports sees only `import ... from`.
    { selector: "ImportExpression", message: "Below src everything is imported at the top." },
  ],
});

export default tseslint.config(
  { ignores: ["dist/", "coverage/", "node_modules/"] },
  tseslint.configs.strict,
  tseslint.configs.stylistic,
  {
    rules: {
      "no-console": "error",
      eqeqeq: "error",
      "@typescript-eslint/consistent-type-imports": "error",
      // Plain type aliases and interfaces are both used, each where it reads best.
      "@typescript-eslint/consistent-type-definitions": "off",
    },
  },
  {
    files: ["shared/**"],
    rules: belowSrc(["functions", "src", "tests"]),
  },
  {
    files: ["functions/**"],
    rules: belowSrc(["src", "tests"]),
  },
  { files: ["src/**"], rules: mayNotImport(["tests"]) },
);
