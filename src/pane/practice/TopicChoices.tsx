import { TOPIC_IDS, TOPIC_TITLES, type TopicId } from "../../practice/topicTitles";
import { Tick } from "../controls/Tick";

interface Props {
  readonly picked: readonly TopicId[];
  readonly onPick: (topics: readonly TopicId[]) => void;
}

/** Which topics the problems go through, in the order of the list; the line on every sheet tells them by their numbers. */
export const TopicChoices = ({ picked, onPick }: Props) => (
  <fieldset>
    <legend>Topics</legend>
    {TOPIC_IDS.map((id, index) => (
      <Tick
        key={id}
        label={`${index + 1}. ${TOPIC_TITLES[id]}`}
        name={`topic-${id}`}
        isTicked={picked.includes(id)}
        onTick={(isTicked) => {
          onPick(TOPIC_IDS.filter((each) => (each === id ? isTicked : picked.includes(each))));
        }}
      />
    ))}
  </fieldset>
);
