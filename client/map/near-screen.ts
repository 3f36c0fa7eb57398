/** On a narrow screen the map lies far below the answer; its libraries wait until it is this near. */
const NEAR_px = 400;

/** Settles once an element is on the screen or near it. */
export function nearScreen(element: HTMLElement): Promise<void> {
  return new Promise((near) => {
    const watch = new IntersectionObserver(
      (seen) => {
        if (!seen.some(({ isIntersecting }) => isIntersecting)) return;
        watch.disconnect();
        near();
      },
      { rootMargin: `${NEAR_px}px` },
    );
    watch.observe(element);
  });
}

/** Whether this browser draws maps: asked before their library is fetched. */
export function drawsMaps(): boolean {
  const context = document.createElement("canvas").getContext("webgl2");
  context?.getExtension("WEBGL_lose_context")?.loseContext();
  return context !== null;
}
