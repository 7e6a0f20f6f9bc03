import { readFileSync } from "node:fs";
import { parseArgs } from "node:util";
import open from "open";
import { bundle, sizesInWords } from "../build/bundle";
import { LOCAL_SITE } from "../build/manifestFor";
import { WEB } from "../build/paths";
import { SERVED_OFFICE_JS } from "../build/webpackConfig";
import { serve, type Certificate } from "./server";

/** `npm start [-- --port 3000] [--no-open] [--cert file --key file]`: builds, serves, opens the local workbook. */
const { values } = parseArgs({
  options: {
    port: { type: "string", default: "3000" },
    "no-open": { type: "boolean", default: false },
    cert: { type: "string" },
    key: { type: "string" },
  },
});

const readCertificate = (): Certificate | undefined =>
  values.cert && values.key ? { cert: readFileSync(values.cert), key: readFileSync(values.key) } : undefined;

/** Whether a browser can be opened. On a computer without a screen the printed address is enough. */
const hasScreen = (): boolean =>
  process.platform !== "linux" || Boolean(process.env.DISPLAY ?? process.env.WAYLAND_DISPLAY);

const start = async (): Promise<void> => {
  process.stdout.write("Building…\n");
  process.stdout.write(
    sizesInWords(
      await bundle({
        officeJsAddress: SERVED_OFFICE_JS,
        siteAddress: LOCAL_SITE,
        folder: WEB,
      }),
    ),
  );
  const { address } = await serve(WEB, Number(values.port), readCertificate());
  process.stdout.write(`Gablewright's local workbook: ${address}\nPress Ctrl+C to stop.\n`);
  if (!values["no-open"] && hasScreen()) await open(address);
};

start().catch((failure: unknown) => {
  process.stderr.write(`${failure instanceof Error ? failure.message : String(failure)}\n`);
  process.exitCode = 1;
});
