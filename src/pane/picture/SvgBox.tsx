import { ToggleButton } from "@fluentui/react-button";
import { useState } from "preact/hooks";

/** One of our own pictures, small enough for the pane or large enough to read. */
export const SvgBox = ({ svg }: { svg: string }) => {
  const [isLarge, setIsLarge] = useState(false);
  return (
    <>
      <div
        class={isLarge ? "picture large" : "picture"}
        // A large picture scrolls, so a keyboard must be able to come to it.
        tabIndex={isLarge ? 0 : -1}
        // Every text in our pictures is escaped where it is made.
        dangerouslySetInnerHTML={{ __html: svg }}
      />
      <ToggleButton
        checked={isLarge}
        onClick={() => {
          setIsLarge(!isLarge);
        }}
      >
        Large picture
      </ToggleButton>
    </>
  );
};
