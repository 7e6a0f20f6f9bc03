import type { Injector } from "@univerjs/core";
import { DrawingRenderService } from "@univerjs/drawing-ui";
import { isFilePicture } from "./filePictures";

/**
 * The pictures of a file are there to be looked at: a click goes through them to the cells, so that nobody moves or deletes what
 * the file would keep as it was.
 */
export const makeFilePicturesViewOnly = (injector: Injector): void => {
  const service = injector.get(DrawingRenderService);
  const render = service.renderImages.bind(service);
  service.renderImages = async (picture, scene) => {
    const images = await render(picture, scene);
    if (isFilePicture(picture))
      for (const image of images ?? []) {
        scene.detachTransformerFrom(image);
        image.evented = false;
      }
    return images;
  };
};
