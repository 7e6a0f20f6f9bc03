import { catalog } from "../../../functions/index";
import { helpPages } from "../../../src/help/pages";

const SITE = "https://tools.example/gablewright/";
const pages = helpPages(catalog, SITE);
const pageOf = (id: string): string =>
  pages.find(({ fileName }) => fileName === `help/${id}.html`)?.html ?? "";

/** What a person reads, without tags and with the signs that HTML writes in its own way. */
const readable = (html: string): string =>
  html
    .replace(/<[^>]*>/g, "")
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&quot;", '"')
    .replaceAll("&amp;", "&");

describe("the help pages", () => {
  it("are an index, a guide for the office and a page a function", () => {
    expect(pages.map(({ fileName }) => fileName)).toEqual([
      "help/index.html",
      "help/office.html",
      ...catalog.map(({ id }) => `help/${id}.html`),
    ]);
  });

  it.each(catalog.map((spec) => [spec.id, spec] as const))(
    "tell of %s what it does, takes and comes from",
    (id, spec) => {
      const text = readable(pageOf(id));
      for (const told of [
        spec.summary,
        spec.formula,
        spec.source,
        ...spec.parameters.flatMap(({ summary, kind }) => [summary, kind.takes]),
      ])
        expect(text).toContain(told);
    },
  );

  it("tell an office the address that the files are made for", () => {
    expect(pageOf("office")).toContain(`<a href="${SITE}">${SITE}</a>`);
    expect(pageOf("index")).toContain('<a href="office.html">');
  });

  it("show the worked example's result before any script has run", () => {
    expect(readable(pageOf("COURSES"))).toContain("=GABLE.COURSES(20, 12)20 courses");
  });

  it("link only to pages that there are", () => {
    const files = new Set(pages.map(({ fileName }) => fileName));
    const links = pages.flatMap(({ html }) => [...html.matchAll(/href="([A-Z]+|index)\.html"/g)]);
    expect(links.length).toBeGreaterThan(catalog.length);
    expect(links.filter(([, name]) => !files.has(`help/${name}.html`))).toEqual([]);
  });

  it("run no script of their own text, so that a strict policy may forbid it", () => {
    for (const { html } of pages) {
      expect(html.match(/<script[^>]*>/g)).toEqual(['<script src="../help.js" defer>']);
      expect(html).not.toMatch(/ (?:style|on[a-z]+)=/);
    }
  });
});
