/** Why a file can't be opened or saved. The message is shown to the user. */
export class FileError extends Error {
  constructor(message: string) {
    super(message);
    this.name = "FileError";
  }
}
