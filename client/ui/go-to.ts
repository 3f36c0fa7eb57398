/**
 * Goes to the heading of what has just opened or come: its section from the top, and the heading in focus. In a layout effect,
 * like all that moves the focus to what opens: a frame later it would take it off who types already.
 */
export function goToHeading(heading: HTMLElement | null): void {
  (heading?.closest("section") ?? heading)?.scrollIntoView({ block: "start" });
  heading?.focus({ preventScroll: true });
}
