import type { Injector } from "@univerjs/core";
import { DrawingRenderService } from "@univerjs/drawing-ui";
import { isFilePicture } from "./filePictures";

/**
 * Makes the pictures of a file view-only: a click goes through them to the cells. Otherwise someone could move or delete a picture
 * that the file keeps as it was.
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
