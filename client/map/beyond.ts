import type { IControl } from "maplibre-gl";

/** A word at the map's foot, where it is shown from nearer than its data go. */
export class Beyond implements IControl {
  readonly #word = document.createElement("p");

  constructor(word: string) {
    this.#word.className = "maplibregl-ctrl map-beyond";
    this.#word.setAttribute("role", "status");
    this.#word.dataset.word = word;
  }

  onAdd(): HTMLElement {
    return this.#word;
  }

  onRemove(): void {
    this.#word.remove();
  }

  /** An empty status says nothing, and is said when it fills. */
  set shown(shown: boolean) {
    this.#word.textContent = shown ? (this.#word.dataset.word ?? "") : "";
  }
}
