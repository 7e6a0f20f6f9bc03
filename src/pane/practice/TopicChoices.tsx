import { TOPIC_IDS, TOPICS, type TopicId } from "../../practice/topics/index";
import { Tick } from "../controls/Tick";

interface Props {
  readonly picked: readonly TopicId[];
  readonly onPick: (topics: readonly TopicId[]) => void;
}

/** The topics of the class, numbered as in the class line on every sheet. */
export const TopicChoices = ({ picked, onPick }: Props) => (
  <fieldset>
    <legend>Topics</legend>
    {TOPICS.map(({ id, title }, index) => (
      <Tick
        key={id}
        label={`${index + 1}. ${title}`}
        name={`topic-${id}`}
        isTicked={picked.includes(id)}
        onTick={(isTicked) => {
          onPick(TOPIC_IDS.filter((each) => (each === id ? isTicked : picked.includes(each))));
        }}
      />
    ))}
  </fieldset>
);
