/** On a narrow screen much lies far below the answer: it is fetched and drawn once it is this near. */
const NEAR_px = 400;

/** Settles once an element is on the screen or near it. */
export function nearScreen(element: Element): Promise<void> {
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
