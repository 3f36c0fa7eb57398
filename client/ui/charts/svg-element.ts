/** An element of a drawing with its attributes and text. */
export function svgElement(
  name: string,
  attributes: Record<string, string | number>,
  text = "",
): SVGElement {
  const element = document.createElementNS("http://www.w3.org/2000/svg", name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, String(value));
  element.textContent = text;
  return element;
}
