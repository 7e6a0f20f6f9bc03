import type { Block } from "../../sheets/extend/block";
import type { ColumnGuess } from "../../sheets/extend/guessColumns";
import { labelInWords } from "../../../shared/spec/parameterCaption";
import { MEANINGS, usualUnit } from "../../sheets/extend/meanings";
import { UNITS, unitsLike } from "../../sheets/extend/unit";
import { ChoiceField } from "../controls/ChoiceField";

interface Props {
  readonly block: Block;
  readonly columns: readonly ColumnGuess[];
  readonly onChange: (columns: ColumnGuess[]) => void;
}

const NOT_USED = "";
const MEANING_CHOICES = [
  { value: NOT_USED, label: "not used" },
  ...MEANINGS.map((meaning) => ({ value: meaning, label: labelInWords(meaning) })).sort((a, b) =>
    a.label.localeCompare(b.label),
  ),
];

/** What each heading probably means, to confirm or correct. */
export const ColumnChoices = ({ block, columns, onChange }: Props) => {
  const change = (index: number, guess: ColumnGuess): void => {
    onChange(columns.map((each, at) => (at === index ? guess : each)));
  };
  return (
    <table class="columns">
      <caption>What the columns hold</caption>
      <thead>
        <tr>
          <th scope="col">Heading</th>
          <th scope="col">Meaning, and unit of plain numbers</th>
        </tr>
      </thead>
      <tbody>
        {columns.map(({ meaning, unit }, index) => {
          const heading = block.headings[index] || `column ${index + 1}`;
          return (
            <tr key={index}>
              <th scope="row">{heading}</th>
              <td>
                <ChoiceField
                  label={`What "${heading}" means`}
                  isLabelHidden
                  value={meaning ?? NOT_USED}
                  choices={MEANING_CHOICES}
                  onValue={(value) => {
                    change(
                      index,
                      value === NOT_USED
                        ? { meaning: undefined, unit: "plain" }
                        : { meaning: value, unit: usualUnit(value) },
                    );
                  }}
                />
                {meaning !== undefined && unitsLike(usualUnit(meaning)).length > 1 && (
                  <ChoiceField
                    label={`Unit of "${heading}"`}
                    isLabelHidden
                    value={unit}
                    choices={unitsLike(usualUnit(meaning)).map((each) => ({
                      value: each,
                      label: UNITS[each].label,
                    }))}
                    onValue={(value) => {
                      change(index, { meaning, unit: value });
                    }}
                  />
                )}
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
};
