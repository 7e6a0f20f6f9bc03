import { useEffect, useMemo, useState } from "preact/hooks";
import { layOut } from "../../../functions/layout/engine/layOut";
import type { Layout } from "../../../functions/layout/engine/listing";
import type { LayoutStart } from "../../../shared/layoutStart";
import type { Host, SheetPicture } from "../../hosts/host";
import { frameOf } from "../../pictures/frame";
import { layoutPicture } from "../../pictures/layoutPicture";
import { PAPER_PALETTE, SCREEN_PALETTE } from "../../pictures/palette";
import { PICTURE, PICTURE_BOX_PX } from "../../sheets/fieldSheet/layout";
import type { PlaneInView } from "../../sheets/planeInView";
import { BestStartFinder } from "./BestStartFinder";
import { usePlaneInView } from "./usePlaneInView";

type Laid = { readonly layout: Layout } | { readonly sentence: string };

const lay = ({ plane, panel }: PlaneInView, start: LayoutStart): Laid => {
  try {
    return { layout: layOut(plane, panel, start, true) };
  } catch (failure) {
    return { sentence: failure instanceof Error ? failure.message : String(failure) };
  }
};

const forTheSheet = (layout: Layout, name: string, sheet: string): SheetPicture => {
  const { width, height } = frameOf(layout);
  const scale = Math.min(PICTURE_BOX_PX.width / width, PICTURE_BOX_PX.height / height);
  const svg = layoutPicture(layout, { title: name, id: `plane-${Date.now()}`, palette: PAPER_PALETTE });
  return { sheet, at: PICTURE, svg, widthPx: width * scale, heightPx: height * scale };
};

/** The plane that a person looks at, laid course by course, drawn again as cells change. */
export const PictureCard = ({ host }: { host: Host }) => {
  const sight = usePlaneInView(host);
  const [found, setFound] = useState<LayoutStart>();
  const [outcome, setOutcome] = useState("");
  const [isLarge, setIsLarge] = useState(false);
  const plane = sight?.kind === "plane" ? sight.plane : undefined;

  // A start that was found holds for the plane that it was found for.
  useEffect(() => {
    setFound(undefined);
    setOutcome("");
  }, [plane?.name, sight?.kind === "plane" ? sight.view.sheet : undefined]);

  const laid = useMemo(() => plane && lay(plane, found ?? plane.start), [plane, found]);

  const put = (layout: Layout): void => {
    if (sight?.kind !== "plane") return;
    host.putPicture(forTheSheet(layout, sight.plane.name, sight.view.sheet)).then(
      () => {
        setOutcome(
          `The picture lies on "${sight.view.sheet}", over the cells from J3 on; drag it where you like.`,
        );
      },
      (failure: unknown) => {
        setOutcome(failure instanceof Error ? failure.message : String(failure));
      },
    );
  };

  return (
    <section class="card" aria-labelledby="picture-title">
      <h2 id="picture-title">Picture</h2>
      {!sight && <p class="hint">Looking at the sheet…</p>}
      {sight?.kind === "nothing" && <p class="hint">{sight.sentence}</p>}
      {laid && "sentence" in laid && <p class="hint">{laid.sentence}</p>}
      {plane && laid && "layout" in laid && (
        <>
          <div
            class={isLarge ? "picture large" : "picture"}
            // A large picture scrolls, so a keyboard must be able to come to it.
            tabIndex={isLarge ? 0 : -1}
            // The picture is our own SVG; every text in it is escaped where it is made.
            dangerouslySetInnerHTML={{
              __html: layoutPicture(laid.layout, {
                title: plane.name,
                id: "pane-plane",
                palette: SCREEN_PALETTE,
              }),
            }}
          />
          <button
            type="button"
            class="quiet"
            aria-pressed={isLarge}
            onClick={() => {
              setIsLarge(!isLarge);
            }}
          >
            Large enough to read
          </button>
          <BestStartFinder plane={plane} onFound={setFound} key={plane.name} />
          <button
            type="button"
            onClick={() => {
              put(laid.layout);
            }}
          >
            Put the picture on the sheet
          </button>
        </>
      )}
      <p role="status" class="outcome written">
        {outcome}
      </p>
    </section>
  );
};
