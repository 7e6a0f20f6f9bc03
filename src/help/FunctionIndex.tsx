import { useState } from "preact/hooks";
import { CONCEPTS, type FunctionSpec } from "../../shared/spec";
import { findFunctions } from "./findFunctions";

/** Every function under its concept, or those that a search finds. */
export const FunctionIndex = ({ catalogue }: { catalogue: readonly FunctionSpec[] }) => {
  const [search, setSearch] = useState("");
  const found = findFunctions(catalogue, search);
  const concepts = CONCEPTS.filter((concept) => found.some((spec) => spec.concept === concept));
  return (
    <>
      <label class="search">
        Search by name or by what it does
        <input
          type="search"
          value={search}
          autocomplete="off"
          onInput={(event) => {
            setSearch(event.currentTarget.value);
          }}
        />
      </label>
      <p role="status">
        {found.length === 0
          ? "No function's help has all of these words."
          : found.length === 1
            ? "1 function"
            : `${found.length} functions`}
      </p>
      {concepts.map((concept) => (
        <section key={concept} aria-labelledby={concept}>
          <h2 id={concept}>{concept}</h2>
          <ul>
            {found
              .filter((spec) => spec.concept === concept)
              .map(({ id, summary }) => (
                <li key={id}>
                  <a href={`${id}.html`}>{id}</a>: {summary}
                </li>
              ))}
          </ul>
        </section>
      ))}
    </>
  );
};
