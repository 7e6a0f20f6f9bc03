/** Why a file can't be opened or saved, in a sentence for the person at the sheet. */
export class FileError extends Error {
  constructor(message: string) {
    super(message);
    this.name = "FileError";
  }
}
