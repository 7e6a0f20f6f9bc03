/** Downloads a file. A browser adds a new file and never overwrites an old one. */
export const download = (content: BlobPart, type: string, name: string): void => {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([content], { type }));
  link.download = name;
  link.click();
  URL.revokeObjectURL(link.href);
};
