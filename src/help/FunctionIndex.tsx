import { useState } from "preact/hooks";
import { counted } from "../../shared/describe";
import { CONCEPTS, type FunctionSpec } from "../../shared/spec/spec";
import { findFunctions } from "./findFunctions";

/** All functions grouped by concept, or those that match a search. */
export const FunctionIndex = ({ catalog }: { catalog: readonly FunctionSpec[] }) => {
  const [search, setSearch] = useState("");
  const { functions: found, matchAll } = findFunctions(catalog, search);
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
          ? "No function matches these words."
          : `${counted(found.length, "function")}${matchAll ? "" : "; none matches every word"}`}
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
