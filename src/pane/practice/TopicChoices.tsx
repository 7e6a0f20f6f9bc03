import { TOPIC_IDS, TOPICS, type TopicId } from "../../practice/topics/index";
import { CheckboxField } from "../controls/CheckboxField";

interface Props {
  readonly picked: readonly TopicId[];
  readonly onPick: (topics: readonly TopicId[]) => void;
}

/** The topics of the class, numbered as in the class line on every sheet. */
export const TopicChoices = ({ picked, onPick }: Props) => (
  <fieldset>
    <legend>Topics</legend>
    {TOPICS.map(({ id, title }, index) => (
      <CheckboxField
        key={id}
        label={`${index + 1}. ${title}`}
        name={`topic-${id}`}
        isChecked={picked.includes(id)}
        onCheck={(isChecked) => {
          onPick(TOPIC_IDS.filter((each) => (each === id ? isChecked : picked.includes(each))));
        }}
      />
    ))}
  </fieldset>
);
