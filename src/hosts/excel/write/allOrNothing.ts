import { errorMessage } from "../../../workbook/errorMessage";

/** Does something; where it fails, takes back what was done, and says so if even that fails. */
export const allOrNothing = async <T>(act: () => Promise<T>, takeBack: () => Promise<void>): Promise<T> => {
  try {
    return await act();
  } catch (failure) {
    try {
      await takeBack();
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
