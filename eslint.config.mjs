import tseslint from "typescript-eslint";

/** Arrows point one way: src -> functions -> shared. Nothing below src knows that a host exists. */
const mayNotImport = (folders) => ({
  "no-restricted-imports": [
    "error",
    {
      patterns: [
        {
          regex: `^(\\.\\./)+(${folders.join("|")})(/|$)`,
          message: "Arrows point one way: src -> functions -> shared.",
        },
      ],
    },
  ],
});

const noHost = ["Office", "Excel", "CustomFunctions", "window", "document", "process", "console", "fetch"];

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
    rules: { ...mayNotImport(["functions", "src", "tests"]), "no-restricted-globals": ["error", ...noHost] },
  },
  {
    files: ["functions/**"],
    rules: { ...mayNotImport(["src", "tests"]), "no-restricted-globals": ["error", ...noHost] },
  },
  { files: ["src/**"], rules: mayNotImport(["tests"]) },
);
