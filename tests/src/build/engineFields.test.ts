import { readFileSync } from "node:fs";
import { join } from "node:path";
import { ROOT } from "../../../src/build/paths";
import { isEngineScript, withFieldHelpers } from "../../../src/build/engineFields.mjs";

/** How the engine's packages are compiled: a helper sets every field. */
const COMPILED = `
function _defineProperty(e, r, t) {
  return r in e ? Object.defineProperty(e, r, { value: t, enumerable: true, configurable: true, writable: true }) : (e[r] = t), e;
}
var Base = class {
  constructor(value) {
    _defineProperty(this, "_value", value);
    _defineProperty(this, "kind", (() => ({ nested: [value, 2] }))());
    _defineProperty(this, "label", "set by the base class");
    _defineProperty(this, "method", void 0);
  }
  method() {}
};
var Derived = class extends Base {
  constructor(value) {
    super(value);
    _defineProperty(this, "_value", value + 1);
  }
  get label() {
    return "an accessor of the derived class";
  }
};
_defineProperty(Derived, "count", 3);
`;

interface Classes {
  readonly Base: new (value: number) => object;
  readonly Derived: (new (value: number) => object) & { readonly count: number };
}

const run = (source: string): Classes => new Function(`${source}; return { Base, Derived };`)() as Classes;

const described = ({ Base, Derived }: Classes) =>
  [new Base(1), new Derived(5), Derived].map((each) => Object.getOwnPropertyDescriptors(each));

describe("the fields of the engine's objects", () => {
  it("are the same with a helper for each", () => {
    const own = run(withFieldHelpers(COMPILED));
    expect(JSON.stringify(described(own))).toBe(JSON.stringify(described(run(COMPILED))));
    expect(own.Derived.count).toBe(3);
  });

  it("leave a script without such fields alone", () => {
    expect(withFieldHelpers("export const plain = 1;\n")).toBe("export const plain = 1;\n");
  });

  it("are set through one helper in the engine as it is published: without the fix, creating its objects is slow", () => {
    const path = join(ROOT, "node_modules/@univerjs/engine-formula/lib/es/index.js");
    expect(isEngineScript(path)).toBe(true);
    const source = readFileSync(path, "utf8");
    const generic = /_defineProperty\(this, "\w+", /g;
    expect(source.match(generic)?.length).toBeGreaterThan(1000);
    expect(withFieldHelpers(source).match(generic)).toBeNull();
  });
});
