import CopyPlugin from "copy-webpack-plugin";
import HtmlWebpackPlugin from "html-webpack-plugin";
import MinimizerPlugin from "minimizer-webpack-plugin";
import MiniCssExtractPlugin from "mini-css-extract-plugin";
import { join } from "node:path";
import { NormalModuleReplacementPlugin, type Configuration } from "webpack";
import { SubresourceIntegrityPlugin } from "webpack-subresource-integrity";
import { catalog } from "../../functions/index";
import { functionsMetadata } from "../hosts/excel/customFunctions/metadata";
import { WORKBOOK_POLICY } from "../help/contentSecurityPolicy";
import { helpPages } from "../help/pages";
import { EmitPlugin } from "./emitPlugin";
import { manifestFor } from "./manifestFor";
import { ROOT, SOURCE } from "./paths";
import { shippedPackages, thirdPartyNotice } from "./thirdParty";

// cspell:ignore apptofilemappingtable ariatelemetry
/** Excel in English needs only these of the Office.js package's 86 MB. They are already minimized. */
const OFFICE_JS = join(ROOT, "node_modules/@microsoft/office-js/dist");
const OFFICE_JS_FILES = [
  "office.js",
  "o15apptofilemappingtable.js",
  "excel-{win32,mac,web}*.js",
  "custom-functions-runtime.js",
  // A pattern, though it matches one file: otherwise the copy would drop the file's folder.
  "en-us/office_strings*.js",
  "ariatelemetry/*.js",
];

/** Several medium scripts load and parse in parallel; one large script doesn't. */
const LARGEST_CHUNK = 600_000;

/**
 * The grid's renderer brings hyphenation dictionaries for sixty languages, which only word-processor pages use. Each becomes an
 * empty module, which the loader reads as "no such dictionary". Leaving them out would throw, because one is loaded at startup.
 */
const HYPHENATION = /^\.\/[a-z0-9-]+-[\w-]{8}\.js$/;
const NOTHING = join(SOURCE, "build/nothing.ts");

export interface BuildOptions {
  /** The address of Office.js for the task pane. In production Microsoft supports only its own address. */
  readonly officeJsAddress: string;
  /** The address that everything will be served from. Excel opens a function's help there. */
  readonly siteAddress: string;
  /** The output folder. */
  readonly folder: string;
}

export const SERVED_OFFICE_JS = "office-js/office.js";

/** The pane's controls are written for React but run on Preact. The grid keeps React. */
const CONTROLS = [/node_modules[\\/]@(?:fluentui|griffel)[\\/]/, join(SOURCE, "pane/controls")];
const PREACT_FOR_REACT = {
  react$: "preact/compat",
  "react-dom$": "preact/compat",
  "react/jsx-runtime": "preact/jsx-runtime",
};

/** How our own scripts are resolved and compiled. */
export const SCRIPTS = {
  resolve: { extensions: [".ts", ".tsx", ".js"] },
  module: {
    rules: [
      {
        test: /\.tsx?$/,
        loader: "ts-loader",
        options: { transpileOnly: true, compilerOptions: { noEmit: false } },
      },
      { include: CONTROLS, resolve: { alias: PREACT_FOR_REACT } },
      { test: /[\\/]@univerjs[\\/].*\.js$/, loader: join(SOURCE, "build/engineFieldsLoader.mjs") },
    ],
  },
} satisfies Configuration;

export const webpackConfig = ({ officeJsAddress, siteAddress, folder }: BuildOptions): Configuration => ({
  mode: "production",
  context: ROOT,
  // Reuses the last build's modules: seconds instead of half a minute.
  cache: {
    type: "filesystem",
    cacheDirectory: join(ROOT, "node_modules/.cache/webpack"),
    buildDependencies: { config: [__filename] },
  },
  entry: {
    functions: join(SOURCE, "hosts/excel/functions.ts"),
    taskpane: join(SOURCE, "hosts/excel/taskpane.ts"),
    local: join(SOURCE, "hosts/local/page/main.ts"),
    help: join(SOURCE, "help/hydrate.tsx"),
    keep: join(SOURCE, "offline/keep.ts"),
    "service-worker": join(SOURCE, "offline/serviceWorker.ts"),
  },
  output: {
    path: folder,
    filename: "[name].js",
    chunkFilename: "[name].[contenthash:8].js",
    clean: true,
    crossOriginLoading: "anonymous",
  },
  resolve: SCRIPTS.resolve,
  module: {
    rules: [...SCRIPTS.module.rules, { test: /\.css$/, use: [MiniCssExtractPlugin.loader, "css-loader"] }],
  },
  optimization: {
    splitChunks: { chunks: "async", maxSize: LARGEST_CHUNK },
    // Files as small as from webpack's own, in a quarter of the time.
    minimizer: [new MinimizerPlugin({ minify: MinimizerPlugin.swcMinify })],
  },
  plugins: [
    new NormalModuleReplacementPlugin(HYPHENATION, (request: { context: string; request: string }) => {
      if (/@univerjs[\\/]engine-render/.test(request.context)) request.request = NOTHING;
    }),
    new MiniCssExtractPlugin({ filename: "[name].css", chunkFilename: "[name].[contenthash:8].css" }),
    new HtmlWebpackPlugin({
      filename: "taskpane.html",
      template: join(SOURCE, "hosts/excel/taskpane.html"),
      chunks: ["functions", "taskpane", "keep"],
      officeJsAddress,
    }),
    new HtmlWebpackPlugin({
      filename: "index.html",
      template: join(SOURCE, "hosts/local/page/index.html"),
      chunks: ["local", "keep"],
      policy: WORKBOOK_POLICY,
    }),
    new EmitPlugin("functions.json", () => JSON.stringify(functionsMetadata(catalog, siteAddress), null, 2)),
    new EmitPlugin("third-party.txt", () => thirdPartyNotice(shippedPackages())),
    ...helpPages(catalog, siteAddress).map(({ fileName, html }) => new EmitPlugin(fileName, () => html)),
    new CopyPlugin({
      patterns: [
        { from: join(SOURCE, "assets/*.png"), to: "assets/[name][ext]" },
        {
          from: join(ROOT, "manifest.xml"),
          to: "manifest.xml",
          transform: (content) => manifestFor(content.toString(), siteAddress),
        },
        ...OFFICE_JS_FILES.map((pattern) => ({
          context: OFFICE_JS,
          from: pattern,
          to: "office-js/[path][name][ext]",
          globOptions: { ignore: ["**/*.debug.js"] },
          info: { minimized: true },
        })),
      ],
    }),
    new SubresourceIntegrityPlugin({ hashFuncNames: ["sha384"] }),
  ],
  performance: { hints: false },
  stats: "errors-warnings",
});
