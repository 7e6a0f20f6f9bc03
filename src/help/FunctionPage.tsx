import type { FunctionSpec } from "../../shared/spec/spec";
import { parameterHelp } from "./parameterHelp";
import { qualifiedName } from "../workbook/namespace";
import { Example } from "./Example";
import { Page } from "./Page";

const signature = (spec: FunctionSpec): string =>
  `${qualifiedName(spec)}(${spec.parameters.map(({ name, optional }) => (optional ? `[${name}]` : name)).join(", ")})`;

interface Props {
  readonly spec: FunctionSpec;
  /** The other functions of its concept. */
  readonly related: readonly FunctionSpec[];
}

/** Everything that the specification says of one function. */
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
            {parameter.name}
            {parameter.optional && " (may be left out)"}
          </dt>
          <dd>
            {parameterHelp(parameter)} Takes {parameter.kind.takes}.
          </dd>
        </div>
      ))}
    </dl>
    <h2>Result</h2>
    <p>
      {spec.columns
        ? `A table: ${spec.columns.map(({ heading }) => heading).join(", ")}.`
        : `One value, or one for each row of a column${spec.result.unit === "" ? "" : `: ${spec.result.unit}`}.`}
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
        <h2 id="related">Related</h2>
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
