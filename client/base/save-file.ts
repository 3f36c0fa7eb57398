/** Offers a file to be saved. */
export function saveFile(name: string, type: string, content: string | Blob): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([content], { type }));
  link.download = name;
  link.click();
  // Some browsers read it only after the press is over.
  setTimeout(() => URL.revokeObjectURL(link.href), 1000);
}
