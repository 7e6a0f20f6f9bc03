import type { Host } from "../../workbook/host";
import { FigurePicture } from "./FigurePicture";
import { PlanePicture } from "./PlanePicture";
import { RoofPicture } from "./RoofPicture";
import { useActivePicture } from "./useActivePicture";

/** A picture of the plane or roof on the active sheet, redrawn when cells change. */
export const PictureCard = ({ host, isShown }: { host: Host; isShown: boolean }) => {
  const picture = useActivePicture(host, isShown);
  return (
    <section class="card" aria-labelledby="picture-title">
      <h2 id="picture-title">Picture</h2>
      {!picture && <p class="hint">Reading the sheet…</p>}
      {picture?.kind === "nothing" && <p class="hint">{picture.sentence}</p>}
      {picture?.kind === "plane" && (
        // The key drops the best start and messages of another plane.
        <PlanePicture
          key={`${picture.view.sheet} ${picture.plane.name}`}
          host={host}
          plane={picture.plane}
          view={picture.view}
        />
      )}
      {picture?.kind === "figure" && <FigurePicture figure={picture.figure} title={picture.title} />}
      {picture?.kind === "roof" && <RoofPicture host={host} roof={picture.roof} sheet={picture.view.sheet} />}
    </section>
  );
};
