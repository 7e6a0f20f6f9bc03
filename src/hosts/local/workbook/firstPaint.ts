import { LifecycleService, LifecycleStages, type Injector } from "@univerjs/core";
import { IRenderManagerService } from "@univerjs/engine-render";
import { filter, firstValueFrom } from "rxjs";

/** Resolves when the browser has shown the grid for the first time. */
export const firstPaint = async (injector: Injector, unitId: string): Promise<void> => {
  await injector.get(LifecycleService).onStage(LifecycleStages.Rendered);
  const render = injector.get(IRenderManagerService).getRenderById(unitId);
  if (!render) throw new Error("The grid has no renderer.");
  // The first frames may come before the canvas has a size.
  await firstValueFrom(render.engine.endFrame$.pipe(filter(() => render.engine.width > 0)));
  // The frame is on the canvas; the browser shows it at its own next frame.
  await new Promise((resolve) => requestAnimationFrame(resolve));
};
