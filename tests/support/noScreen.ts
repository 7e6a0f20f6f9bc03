// Imported before anything that loads it: the library's part that draws pictures can't be loaded without a screen.
jest.mock("@univerjs/drawing-ui", () => ({ DrawingRenderService: Symbol("DrawingRenderService") }));
