/** Whether this browser draws maps: asked before their library is fetched. */
export function drawsMaps(): boolean {
  const context = document.createElement("canvas").getContext("webgl2");
  context?.getExtension("WEBGL_lose_context")?.loseContext();
  return context !== null;
}
