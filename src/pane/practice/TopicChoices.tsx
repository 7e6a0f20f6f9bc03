import { TOPICS } from "../../practice/topics/index";

interface Props {
  readonly picked: readonly string[];
  readonly onPick: (topics: readonly string[]) => void;
}

/** Which topics the problems go through, in the order of the list. */
export const TopicChoices = ({ picked, onPick }: Props) => (
  <fieldset>
    <legend>Topics</legend>
    {TOPICS.map(({ id, title }) => (
      <label key={id} class="check">
        <input
          type="checkbox"
          name={`topic-${id}`}
          checked={picked.includes(id)}
          onChange={({ currentTarget: { checked } }) => {
            onPick(
              TOPICS.map((topic) => topic.id).filter((each) =>
                each === id ? checked : picked.includes(each),
              ),
            );
          }}
        />
        {title}
      </label>
    ))}
  </fieldset>
);
