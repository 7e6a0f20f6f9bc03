import type { Host } from "../../workbook/host";
import { FigurePicture } from "./FigurePicture";
import { PlanePicture } from "./PlanePicture";
import { RoofPicture } from "./RoofPicture";
import { useSight } from "./useSight";

/** The plane or roof that a person looks at, drawn again as cells change. */
export const PictureCard = ({ host, isShown }: { host: Host; isShown: boolean }) => {
  const sight = useSight(host, isShown);
  return (
    <section class="card" aria-labelledby="picture-title">
      <h2 id="picture-title">Picture</h2>
      {!sight && <p class="hint">Reading the sheet…</p>}
      {sight?.kind === "nothing" && <p class="hint">{sight.sentence}</p>}
      {sight?.kind === "plane" && (
        // A start that was found, and what was said, hold for the plane that they are about.
        <PlanePicture
          key={`${sight.view.sheet} ${sight.plane.name}`}
          host={host}
          plane={sight.plane}
          view={sight.view}
        />
      )}
      {sight?.kind === "figure" && <FigurePicture figure={sight.figure} title={sight.title} />}
      {sight?.kind === "roof" && <RoofPicture host={host} roof={sight.roof} sheet={sight.view.sheet} />}
    </section>
  );
};
