import { parameterCaption } from "../../shared/spec/parameterCaption";
import type { FunctionSpec } from "../../shared/spec/spec";
import { parameterHelp } from "./parameterHelp";
import { qualifiedName } from "../workbook/namespace";
import { Example } from "./Example";
import { Page } from "./Page";

const signature = (spec: FunctionSpec): string =>
  `${qualifiedName(spec)}(${spec.parameters.map(({ name, optional }) => (optional ? `[${name}]` : name)).join(", ")})`;

interface Props {
  readonly spec: FunctionSpec;
  /** The other functions of the same concept. */
  readonly related: readonly FunctionSpec[];
}

/** The help page of one function, made from its specification. */
export const FunctionPage = ({ spec, related }: Props) => (
  <Page title={qualifiedName(spec)} summary={spec.summary}>
    <p>
      <code>{signature(spec)}</code>
    </p>
    <h2>Parameters</h2>
    <dl>
      {spec.parameters.map((parameter) => (
        <div key={parameter.name}>
          <dt>
            {parameterCaption(parameter)}
            {parameter.optional && ", optional"}
          </dt>
          <dd>
            {parameterHelp(parameter)} Accepts {parameter.kind.takes}.
          </dd>
        </div>
      ))}
    </dl>
    <h2>Result</h2>
    <p>
      {spec.columns
        ? `A table with the columns ${new Intl.ListFormat("en").format(spec.columns.map(({ heading }) => heading))}.`
        : `One value${spec.result.unit === "" ? "" : ` (${spec.result.unit})`}. If an input is a column, one value for each row.`}
    </p>
    <p>{spec.formula}</p>
    <h2>Try it</h2>
    <div id="example" data-function={spec.id}>
      <Example spec={spec} />
    </div>
    <h2>Source</h2>
    <p>{spec.source}</p>
    {related.length > 0 && (
      <nav aria-labelledby="related">
        <h2 id="related">Related functions</h2>
        <ul>
          {related.map(({ id, summary }) => (
            <li key={id}>
              <a href={`${id}.html`}>{id}</a>: {summary}
            </li>
          ))}
        </ul>
      </nav>
    )}
    <p>
      <a href="index.html">All functions</a>
    </p>
  </Page>
);
