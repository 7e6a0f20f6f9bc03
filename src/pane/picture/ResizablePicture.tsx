import { ToggleButton } from "@fluentui/react-button";
import { useState } from "preact/hooks";

/** An SVG picture, at the pane's width or large. */
export const ResizablePicture = ({ svg }: { svg: string }) => {
  const [isLarge, setIsLarge] = useState(false);
  return (
    <>
      <div
        class={isLarge ? "picture large" : "picture"}
        // A large picture scrolls, so it must be focusable.
        tabIndex={isLarge ? 0 : -1}
        // Our pictures escape all text when they are made.
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
