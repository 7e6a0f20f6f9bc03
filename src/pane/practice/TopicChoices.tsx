import { TOPIC_IDS, TOPIC_TITLES, type TopicId } from "../../practice/topicTitles";

interface Props {
  readonly picked: readonly TopicId[];
  readonly onPick: (topics: readonly TopicId[]) => void;
}

/** Which topics the problems go through, in the order of the list. */
export const TopicChoices = ({ picked, onPick }: Props) => (
  <fieldset>
    <legend>Topics</legend>
    {TOPIC_IDS.map((id) => (
      <label key={id} class="check">
        <input
          type="checkbox"
          name={`topic-${id}`}
          checked={picked.includes(id)}
          onChange={({ currentTarget: { checked } }) => {
            onPick(TOPIC_IDS.filter((each) => (each === id ? checked : picked.includes(each))));
          }}
        />
        {TOPIC_TITLES[id]}
      </label>
    ))}
  </fieldset>
);
