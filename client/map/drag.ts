import "./drag.css";
import type { Map as GlMap } from "maplibre-gl";
import { unMercator } from "./coasts.ts";

interface Offset {
  x: number;
  y: number;
}

/** How far the sheet may be pulled, px: as it reaches beyond what is seen, down and up also as the world does. */
interface Reach extends Offset {
  down: number;
  up: number;
}

/** Class of a sheet that reaches beyond what is seen. */
const WIDE = "wide";
const HOME: Offset = { x: 0, y: 0 };
/** Less than this is a hand that shakes at a click; our own working value. */
const CLICK_px = 3;
/** A sheet let go glides as far as it went in this time, and for so long; our own working values. */
const GLIDE_AS_FAR_ms = 80;
const GLIDE_ms = 300;
/** Its speed is that of the last moves within this time. */
const LAST_ms = 80;

/**
 * Pans a map without drawing it: the sheet is larger than what is seen of it and is pulled along as it is, which a
 * browser does without any script. It is drawn afresh when it comes to rest, or when its edge would come into view.
 * The map leaves dragging to this; a second finger is the map's own.
 */
export class Drag {
  readonly #map: GlMap;
  readonly #seen: HTMLElement;
  readonly #pane: HTMLElement;
  readonly #fingers = new Set<number>();
  #offset = HOME;
  /** Where the pointer was when the sheet lay at home; none while nothing is dragged. */
  #from: Offset | undefined;
  #reach: Reach = { ...HOME, down: 0, up: 0 };
  #likely = matchMedia("(hover: none)").matches;
  #moved = false;
  #last: { at: number; offset: Offset }[] = [];
  #glide: Animation | undefined;
  #frame = 0;

  /**
   * @param seen what is seen of the sheet: the element that the map's container lies in
   * @param onLikely told when the sheet may be widened, as soon as nothing else is drawn
   */
  constructor(map: GlMap, seen: HTMLElement, onLikely: () => void) {
    this.#map = map;
    this.#seen = seen;
    this.#pane = map.getCanvasContainer();
    map.on("resize", () => this.#keepInView());
    // Not at the press: a drag begins with as little as it goes on.
    map.on("moveend", () => {
      this.#reach = this.#reachNow();
    });
    const sheet = map.getContainer();
    // Whatever else moves the map shall find it where it is seen.
    for (const type of ["pointerdown", "wheel", "keydown"])
      sheet.addEventListener(type, () => this.land(), { capture: true, passive: true });
    const becomeLikely = () => {
      this.#likely = true;
      onLikely();
    };
    sheet.addEventListener("pointerenter", becomeLikely, { once: true });
    const pane = this.#pane;
    pane.addEventListener("pointerdown", (event) => this.#press(event));
    pane.addEventListener("pointermove", (event) => this.#move(event));
    pane.addEventListener("pointerup", (event) => this.#release(event, true));
    pane.addEventListener("pointercancel", (event) => this.#release(event, false));
    // A drag is none of the map's business, and its end is no click.
    pane.addEventListener("mousemove", (event) => this.#from && event.stopPropagation(), true);
    pane.addEventListener("click", (event) => this.#moved && event.stopPropagation(), true);
  }

  /**
   * Draws the sheet beyond what is seen, once that is drawn and a drag is likely: a pointer that hovers is over the map,
   * or there is none that hovers. True when it was not so before.
   */
  widen(): boolean {
    const { classList } = this.#map.getContainer();
    if (classList.contains(WIDE) || !this.#likely) return false;
    classList.add(WIDE);
    this.#map.dragPan.disable();
    this.#map.resize().redraw();
    return true;
  }

  /** Whether a position lies in what is seen. */
  sees(position: [lon: number, lat: number]): boolean {
    const { x, y } = this.#map.project(position);
    const from = this.#beyond;
    const { clientWidth, clientHeight } = this.#seen;
    return x >= from.x && x <= from.x + clientWidth && y >= from.y && y <= from.y + clientHeight;
  }

  /** Ends a glide where the sheet is now. */
  land(): void {
    if (!this.#glide) return;
    const { e, f } = new DOMMatrix(getComputedStyle(this.#pane).transform);
    this.#offset = { x: Math.round(e), y: Math.round(f) };
    this.stop();
    this.#drawAfresh();
  }

  /** Forgets a glide. */
  stop(): void {
    this.#glide?.cancel();
    this.#glide = undefined;
  }

  /** How far the sheet reaches beyond what is seen, px on each side. */
  get #beyond(): Offset {
    const sheet = this.#map.getContainer();
    return {
      x: (sheet.clientWidth - this.#seen.clientWidth) / 2,
      y: (sheet.clientHeight - this.#seen.clientHeight) / 2,
    };
  }

  /** The map's limits are those of what is seen: as its padding, what lies beyond may lie beyond the world. */
  #keepInView(): void {
    const { x, y } = this.#beyond;
    this.#map.setPadding({ left: x, right: x, top: y, bottom: y });
  }

  #press({ pointerId, button, shiftKey, clientX, clientY }: PointerEvent): void {
    this.#fingers.add(pointerId);
    if (this.#fingers.size > 1 || this.#reach.x === 0) {
      if (this.#from && this.#moved) this.#drawAfresh();
      this.#from = undefined;
      this.#map.dragPan.enable();
      return;
    }
    if (this.#map.dragPan.isEnabled()) this.#map.dragPan.disable();
    this.#moved = false;
    this.#last = [];
    // With the shift key the map draws a box to zoom to.
    this.#from = button === 0 && !shiftKey ? { x: clientX, y: clientY } : undefined;
  }

  #move({ pointerId, clientX, clientY, timeStamp }: PointerEvent): void {
    if (!this.#from) return;
    const to = { x: clientX - this.#from.x, y: clientY - this.#from.y };
    if (!this.#moved) {
      if (Math.hypot(to.x, to.y) < CLICK_px) return;
      this.#moved = true;
      this.#pane.setPointerCapture(pointerId);
    }
    this.#pullTo(to);
    if (this.#atItsEnd()) {
      const { x, y } = this.#offset;
      this.#drawAfresh();
      this.#from = { x: this.#from.x + x, y: this.#from.y + y };
      this.#last = [];
    }
    this.#last = this.#last.filter(({ at }) => timeStamp - at < LAST_ms);
    this.#last.push({ at: timeStamp, offset: this.#offset });
  }

  #release({ pointerId, timeStamp }: PointerEvent, glides: boolean): void {
    this.#fingers.delete(pointerId);
    if (!this.#from) return;
    this.#from = undefined;
    if (!this.#moved) return;
    const start = this.#last.find(({ at }) => timeStamp - at < LAST_ms);
    const still = !glides || matchMedia("(prefers-reduced-motion: reduce)").matches;
    if (!start || start.at === timeStamp || still) {
      this.#drawAfresh();
      return;
    }
    const further = GLIDE_AS_FAR_ms / (timeStamp - start.at);
    const { x, y } = this.#offset;
    this.#glideTo({
      x: x + (x - start.offset.x) * further,
      y: y + (y - start.offset.y) * further,
    });
  }

  #reachNow(): Reach {
    const { x, y } = this.#beyond;
    const edge = (share: number) => this.#map.project([0, unMercator(0, share)[0]]).y;
    const down = Math.min(y, Math.max(0, y - edge(0)));
    const up = Math.min(y, Math.max(0, edge(1) - y - this.#seen.clientHeight));
    return { x, y, down, up };
  }

  /** Whether more of the sheet is needed. */
  #atItsEnd(): boolean {
    const { x, y } = this.#reach;
    return Math.abs(this.#offset.x) >= Math.floor(x) || Math.abs(this.#offset.y) >= Math.floor(y);
  }

  /** Pulls the sheet as far as it can be; whole pixels keep it sharp. */
  #pullTo(to: Offset): void {
    const { x, down, up } = this.#reach;
    this.#offset = {
      x: Math.round(Math.min(x, Math.max(-x, to.x))),
      y: Math.round(Math.min(down, Math.max(-up, to.y))),
    };
    // With the frame: the map asks where it lies at every move of the mouse, and would have the page laid out for it.
    cancelAnimationFrame(this.#frame);
    this.#frame = requestAnimationFrame(() => {
      this.#pane.style.transform = placed(this.#offset);
    });
  }

  #glideTo(to: Offset): void {
    const from = placed(this.#offset);
    this.#pullTo(to);
    const glide = this.#pane.animate(
      { transform: [from, placed(this.#offset)] },
      { duration: GLIDE_ms, easing: "cubic-bezier(0, 0, 0.3, 1)" },
    );
    this.#glide = glide;
    glide.onfinish = () => {
      this.#glide = undefined;
      this.#drawAfresh();
    };
  }

  /** Draws what is seen now into the middle of the sheet, and lays that where it belongs, at once. */
  #drawAfresh(): void {
    const { clientWidth, clientHeight } = this.#map.getContainer();
    const { x, y } = this.#offset;
    const center = this.#map.unproject([clientWidth / 2 - x, clientHeight / 2 - y]);
    this.#map.jumpTo({ center }).redraw();
    this.#offset = HOME;
    this.#pane.style.transform = placed(HOME);
  }
}

const placed = ({ x, y }: Offset) => `translate(${x}px, ${y}px)`;
