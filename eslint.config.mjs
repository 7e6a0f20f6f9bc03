import tseslint from "typescript-eslint";

/**
 * The layers of the project, top first. A file may import only from its own folder here and from layers below it: folders
 * that share a layer don't know each other. Nothing below src knows that a host exists.
 */
const LAYERS = [
  ["tests"],
  ["src/build", "src/offline", "src/server", "src/terminal"],
  ["src/hosts"],
  ["src/pane"],
  ["src/help", "src/practice"],
  ["src/sheets", "src/xlsx"],
  ["src/workbook"],
  ["src/pictures"],
  ["functions"],
  ["shared"],
];
const TOOLS = LAYERS[1];

/** What may not be imported from a folder: what stands beside or above it. The tools may use each other. */
const notBelow = (folder) => {
  const layer = LAYERS.findIndex((folders) => folders.includes(folder));
  const beside = TOOLS.includes(folder) ? [] : LAYERS[layer].filter((each) => each !== folder);
  const above = LAYERS.slice(0, layer).flat();
  return folder.startsWith("src/") ? [...above, ...beside] : [...above, "src"];
};

const mayNotImport = (folder, ...otherPatterns) => ({
  "no-restricted-imports": [
    "error",
    {
      patterns: [
        {
          regex: `^(\\.\\./)+(src/)?(${notBelow(folder)
            .map((each) => each.replace("src/", ""))
            .join("|")})(/|$)`,
          message: "Each layer imports only from those below it: see LAYERS in eslint.config.mjs.",
        },
        ...otherPatterns,
      ],
    },
  ],
});

const noHost = ["Office", "Excel", "CustomFunctions", "window", "document", "process", "console", "fetch"];

const NOT_TWICE_THE_SAME = "A function must answer the same the second time.";

/** What holds in both folders below src: no host, no package but decimals and hashes, and nothing that differs from one call to the next. */
const belowSrc = (folder) => ({
  ...mayNotImport(folder, {
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
  ...["shared", "functions"].map((folder) => ({ files: [`${folder}/**`], rules: belowSrc(folder) })),
  ...LAYERS.flat()
    .filter((folder) => folder.startsWith("src/"))
    .map((folder) => ({ files: [`${folder}/**`], rules: mayNotImport(folder) })),
);
