import CompressionPlugin from "compression-webpack-plugin";
import CopyPlugin from "copy-webpack-plugin";
import HtmlWebpackPlugin from "html-webpack-plugin";
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
/** Of the Office.js package's 86 MB only these are needed for Excel in English; its scripts come minimized. */
const OFFICE_JS = join(ROOT, "node_modules/@microsoft/office-js/dist");
const OFFICE_JS_FILES = [
  "office.js",
  "o15apptofilemappingtable.js",
  "excel-{win32,mac,web}*.js",
  "custom-functions-runtime.js",
  // A pattern, though it is one file: only then is its folder kept.
  "en-us/office_strings*.js",
  "ariatelemetry/*.js",
];

/** Several middling scripts load and parse side by side; one large one doesn't. */
const LARGEST_CHUNK = 600_000;

/**
 * The grid's renderer brings hyphenation dictionaries of sixty languages, for word-processor pages only. Each becomes an
 * empty module, which its loader takes for "no such dictionary". (Leaving them out throws: one is loaded at the start.)
 */
const HYPHENATION = /^\.\/[a-z0-9-]+-[\w-]{8}\.js$/;
const NOTHING = join(SOURCE, "build/nothing.ts");

export interface BuildOptions {
  /** Where the task pane loads Office.js from; Microsoft supports only its own address in production. */
  readonly officeJsAddress: string;
  /** Where all this will be served from: Excel opens a function's help there. */
  readonly siteAddress: string;
  /** Where the files go. */
  readonly folder: string;
  /** Whether it is for others to serve: then files are stamped and kept in the browser, and compressing them is left to the host. */
  readonly isPackage: boolean;
}

export const SERVED_OFFICE_JS = "office-js/office.js";

/** What a package's pages load besides their own. */
const KEPT = ["keep"];

/** The controls are written for React; Preact runs them. The grid's own, elsewhere, keep React. */
const CONTROLS = [/node_modules[\\/]@(?:fluentui|griffel)[\\/]/, join(SOURCE, "pane/controls")];
const PREACT_FOR_REACT = {
  react$: "preact/compat",
  "react-dom$": "preact/compat",
  "react/jsx-runtime": "preact/jsx-runtime",
};

/** How our own scripts are found and read. */
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
    ],
  },
} satisfies Configuration;

export const webpackConfig = ({
  officeJsAddress,
  siteAddress,
  folder,
  isPackage,
}: BuildOptions): Configuration => ({
  mode: "production",
  context: ROOT,
  // What hasn't changed since the last build is taken from it: seconds instead of half a minute. A package keeps its own: with the
  // other build's it may take exports for unused that it uses.
  cache: {
    type: "filesystem",
    name: isPackage ? "package" : "web",
    cacheDirectory: join(ROOT, "node_modules/.cache/webpack"),
    buildDependencies: { config: [__filename] },
  },
  entry: {
    functions: join(SOURCE, "hosts/excel/functions.ts"),
    taskpane: join(SOURCE, "hosts/excel/taskpane.ts"),
    local: join(SOURCE, "hosts/local/page/main.ts"),
    help: join(SOURCE, "help/live.tsx"),
    ...(isPackage && {
      keep: join(SOURCE, "offline/keep.ts"),
      "service-worker": join(SOURCE, "offline/serviceWorker.ts"),
    }),
  },
  output: {
    path: folder,
    filename: "[name].js",
    chunkFilename: "[name].[contenthash:8].js",
    clean: true,
    ...(isPackage && { crossOriginLoading: "anonymous" as const }),
  },
  resolve: SCRIPTS.resolve,
  module: {
    rules: [...SCRIPTS.module.rules, { test: /\.css$/, use: [MiniCssExtractPlugin.loader, "css-loader"] }],
  },
  optimization: { splitChunks: { chunks: "async", maxSize: LARGEST_CHUNK } },
  plugins: [
    new NormalModuleReplacementPlugin(HYPHENATION, (request: { context: string; request: string }) => {
      if (/@univerjs[\\/]engine-render/.test(request.context)) request.request = NOTHING;
    }),
    new MiniCssExtractPlugin({ filename: "[name].css", chunkFilename: "[name].[contenthash:8].css" }),
    new HtmlWebpackPlugin({
      filename: "taskpane.html",
      template: join(SOURCE, "hosts/excel/taskpane.html"),
      chunks: ["functions", "taskpane", ...(isPackage ? KEPT : [])],
      officeJsAddress,
    }),
    new HtmlWebpackPlugin({
      filename: "index.html",
      template: join(SOURCE, "hosts/local/page/index.html"),
      chunks: ["local", ...(isPackage ? KEPT : [])],
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
    isPackage
      ? new SubresourceIntegrityPlugin({ hashFuncNames: ["sha384"] })
      : new CompressionPlugin({ test: /\.(?:js|css|html|json)$/ }),
  ],
  performance: { hints: false },
  stats: "errors-warnings",
});
