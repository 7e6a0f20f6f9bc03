import { renderToString } from "preact-render-to-string";
import type { VNode } from "preact";
import type { FunctionSpec } from "../../shared/spec/spec";
import { FunctionIndex } from "./FunctionIndex";
import { FunctionPage } from "./FunctionPage";
import { OfficeGuide } from "./OfficeGuide";
import { Page } from "./Page";

export interface HelpPage {
  readonly fileName: string;
  readonly html: string;
}

const page = (fileName: string, content: VNode): HelpPage => ({
  fileName,
  html: `<!doctype html>${renderToString(content)}`,
});

/**
 * One page per function and an index, made from the specifications, and the guide for an office. They can be read without
 * JavaScript; with it, examples and search work.
 */
export const helpPages = (catalog: readonly FunctionSpec[], site: string): HelpPage[] => [
  page(
    "help/index.html",
    <Page title="Functions" summary="All Gablewright functions by topic.">
      <div id="index">
        <FunctionIndex catalog={catalog} />
      </div>
      <p>
        <a href="office.html">For the office</a>: install Gablewright in Excel for one person or for everyone.
      </p>
    </Page>,
  ),
  page("help/office.html", <OfficeGuide site={site} />),
  ...catalog.map((spec) =>
    page(
      `help/${spec.id}.html`,
      <FunctionPage
        spec={spec}
        related={catalog.filter((other) => other !== spec && other.concept === spec.concept)}
      />,
    ),
  ),
];
