import { errorMessage } from "../../../workbook/errorMessage";

/** Does something. If it fails, undoes what was done; if that fails too, the error says so. */
export const allOrNothing = async <T>(act: () => Promise<T>, undo: () => Promise<void>): Promise<T> => {
  try {
    return await act();
  } catch (failure) {
    try {
      await undo();
    } catch (second) {
      throw new Error(
        `${errorMessage(failure)}; and what was done could not be undone: ${errorMessage(second)}`,
        {
          cause: failure,
        },
      );
    }
    throw failure;
  }
};
