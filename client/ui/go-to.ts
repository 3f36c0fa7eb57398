/** Goes to the heading of what has just opened or come: its section from the top, and the heading in focus. */
export function goToHeading(heading: HTMLElement | null): void {
  (heading?.closest("section") ?? heading)?.scrollIntoView({ block: "start" });
  heading?.focus({ preventScroll: true });
}
