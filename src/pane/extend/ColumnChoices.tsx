import type { Block } from "../../sheets/extend/block";
import type { Guess } from "../../sheets/extend/headings";
import { inWords, MEANINGS, usualUnit } from "../../sheets/extend/meanings";
import { UNITS, unitsLike, type UnitName } from "../../sheets/extend/unit";

interface Props {
  readonly block: Block;
  readonly columns: readonly Guess[];
  readonly onChange: (columns: Guess[]) => void;
}

const NOT_USED = "";

/** What each heading of the block is taken for, to be confirmed or corrected. */
export const ColumnChoices = ({ block, columns, onChange }: Props) => {
  const change = (index: number, guess: Guess): void => {
    onChange(columns.map((each, at) => (at === index ? guess : each)));
  };
  return (
    <table class="columns">
      <caption>What the columns hold</caption>
      <thead>
        <tr>
          <th scope="col">Heading</th>
          <th scope="col">Means, and what plain numbers are in</th>
        </tr>
      </thead>
      <tbody>
        {columns.map(({ meaning, unit }, index) => {
          const heading = block.headings[index] || `column ${index + 1}`;
          return (
            <tr key={index}>
              <th scope="row">{heading}</th>
              <td>
                <select
                  aria-label={`What "${heading}" means`}
                  value={meaning ?? NOT_USED}
                  onChange={({ currentTarget: { value } }) => {
                    change(
                      index,
                      value === NOT_USED
                        ? { meaning: undefined, unit: "plain" }
                        : { meaning: value, unit: usualUnit(value) },
                    );
                  }}
                >
                  <option value={NOT_USED}>not used</option>
                  {MEANINGS.map((each) => (
                    <option key={each} value={each}>
                      {inWords(each)}
                    </option>
                  ))}
                </select>
                {meaning !== undefined && unitsLike(usualUnit(meaning)).length > 1 && (
                  <select
                    aria-label={`Unit of "${heading}"`}
                    value={unit}
                    onChange={({ currentTarget: { value } }) => {
                      change(index, { meaning, unit: value as UnitName });
                    }}
                  >
                    {unitsLike(usualUnit(meaning)).map((each) => (
                      <option key={each} value={each}>
                        {UNITS[each].label}
                      </option>
                    ))}
                  </select>
                )}
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
};
