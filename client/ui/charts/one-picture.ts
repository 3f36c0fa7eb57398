/** A drawn chart as a single picture of one name, with its looks from the stylesheet. */
export function onePicture<T extends Element>(svg: T, className: string): T {
  // The page's policy allows no inline style.
  svg.querySelector("style")?.remove();
  // Its parts are in the table.
  for (const part of svg.querySelectorAll("[aria-label]")) part.removeAttribute("aria-label");
  svg.setAttribute("class", className);
  svg.setAttribute("role", "img");
  return svg;
}
