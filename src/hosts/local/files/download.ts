/** Saves something beside what is there: a browser never writes over a file by itself. */
export const download = (content: BlobPart, type: string, name: string): void => {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([content], { type }));
  link.download = name;
  link.click();
  URL.revokeObjectURL(link.href);
};
