/** Whether a field holds what is no number: the last one read still stands in its place, and is not what its owner sees. */
export function hasUnread(form: HTMLElement | null): boolean {
  return form?.querySelector("[data-unread]") !== null;
}

/** Goes to the first thing to put right in a form, once it is drawn: in the middle of the screen, and in focus. */
export function goToFirstMarked(form: HTMLElement | null): void {
  setTimeout(() => {
    // A sentence that says why not is the last resort: it has no field of its own.
    const first =
      form?.querySelector<HTMLElement>("[aria-invalid], [data-unread], .slips") ??
      form?.querySelector<HTMLElement>("[role=alert]");
    for (let fold = first?.closest("details"); fold; fold = fold.parentElement?.closest("details"))
      fold.open = true;
    first?.scrollIntoView({ block: "center" });
    first?.focus({ preventScroll: true });
  });
}
