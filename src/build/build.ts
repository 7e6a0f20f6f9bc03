import { parseArgs } from "node:util";
import { bundle, sizesInWords } from "./bundle";
import { LOCAL_SITE } from "./manifestFor";
import { WEB } from "./paths";
import { SERVED_OFFICE_JS } from "./webpackConfig";

/** `npm run build [-- --office-js https://... --site https://...]` */
const { values } = parseArgs({
  options: {
    "office-js": { type: "string", default: SERVED_OFFICE_JS },
    site: { type: "string", default: LOCAL_SITE },
  },
});

bundle({
  officeJsAddress: values["office-js"],
  siteAddress: values.site,
  folder: WEB,
}).then(
  (sizes) => {
    process.stdout.write(sizesInWords(sizes));
  },
  (failure: unknown) => {
    process.stderr.write(`${failure instanceof Error ? failure.message : String(failure)}\n`);
    process.exitCode = 1;
  },
);
