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
/** It is drawn afresh once it has rested so long: whoever pulls again sooner is not held up. */
const REST_ms = 250;

/**
 * Pans a map without drawing it: the sheet is larger than what is seen of it and is pulled along as it is, which a
 * browser does without any script. It is drawn afresh when it has come to rest, or when its edge would come into view.
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
  #glide: { animation: Animation; from: Offset } | undefined;
  #rest: ReturnType<typeof setTimeout> | undefined;

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
    const pane = this.#pane;
    // Whatever else moves the map shall find it where it is seen.
    for (const type of ["pointerdown", "wheel", "keydown"])
      sheet.addEventListener(
        type,
        ({ target }) => {
          if (type !== "pointerdown" || !pane.contains(target as Node)) this.land();
        },
        { capture: true, passive: true },
      );
    const becomeLikely = () => {
      this.#likely = true;
      onLikely();
    };
    if (!this.#likely) sheet.addEventListener("pointerenter", becomeLikely, { once: true });
    pane.addEventListener("pointerdown", (event) => this.#press(event));
    pane.addEventListener("pointermove", (event) => this.#move(event));
    pane.addEventListener("pointerup", (event) => this.#release(event, true));
    pane.addEventListener("pointercancel", (event) => this.#release(event, false));
    // A drag is none of the map's business: it would ask where it lies at every move of the mouse over the page.
    const removed = new AbortController();
    map.once("remove", () => removed.abort());
    for (const type of ["mousedown", "mousemove"] as const)
      addEventListener(type, (event) => this.#from && event.stopPropagation(), {
        capture: true,
        signal: removed.signal,
      });
    pane.addEventListener("touchmove", (event) => this.#moved && event.stopPropagation(), true);
    // Having heard of no move, the map would take its end for a tap.
    pane.addEventListener("touchend", (event) => this.#moved && forget(event), true);
    // Its end is no click.
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

  /** Draws at once what is seen now, where a drag or its glide has left the sheet. */
  land(): void {
    this.stop();
    if (this.#offset === HOME) return;
    this.#moveHome();
    this.#map.redraw();
    this.#lay();
  }

  /** Leaves the sheet where it is now: nothing glides, and nothing is drawn later. */
  stop(): void {
    clearTimeout(this.#rest);
    if (!this.#glide) return;
    const { animation, from } = this.#glide;
    const share = animation.effect?.getComputedTiming().progress ?? 1;
    this.#offset = {
      x: Math.round(from.x + (this.#offset.x - from.x) * share),
      y: Math.round(from.y + (this.#offset.y - from.y) * share),
    };
    animation.cancel();
    this.#glide = undefined;
    this.#lay();
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
    this.#from = undefined;
    this.#moved = false;
    const mine = this.#fingers.size === 1 && this.#reach.x > 0;
    if (mine === this.#map.dragPan.isEnabled()) this.#map.dragPan[mine ? "disable" : "enable"]();
    // With the shift key the map draws a box to zoom to.
    if (!mine || button !== 0 || shiftKey) {
      this.land();
      return;
    }
    this.stop();
    this.#last = [];
    this.#from = { x: clientX - this.#offset.x, y: clientY - this.#offset.y };
  }

  #move({ pointerId, clientX, clientY, timeStamp }: PointerEvent): void {
    if (!this.#from) return;
    const to = { x: clientX - this.#from.x, y: clientY - this.#from.y };
    if (!this.#moved) {
      if (Math.hypot(to.x - this.#offset.x, to.y - this.#offset.y) < CLICK_px) return;
      this.#moved = true;
      this.#map.getCanvas().setPointerCapture(pointerId);
    }
    this.#pullTo(to);
    if (this.#atItsEnd()) {
      const { x, y } = this.#offset;
      this.#drawAfresh();
      this.#from = { x: this.#from.x + x, y: this.#from.y + y };
      // What the old sheet could not be pulled any more, the new one is.
      this.#pullTo({ x: to.x - x, y: to.y - y });
      this.#last = [];
    } else this.#lay();
    this.#last = this.#last.filter(({ at }) => timeStamp - at < LAST_ms);
    this.#last.push({ at: timeStamp, offset: this.#offset });
  }

  #release({ pointerId, timeStamp }: PointerEvent, glides: boolean): void {
    this.#fingers.delete(pointerId);
    if (!this.#from) return;
    this.#from = undefined;
    if (!this.#moved) {
      this.land();
      return;
    }
    const start = this.#last.find(({ at }) => timeStamp - at < LAST_ms);
    const still = !glides || matchMedia("(prefers-reduced-motion: reduce)").matches;
    if (!start || start.at === timeStamp || still) {
      this.#comeToRest();
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
  }

  #glideTo(to: Offset): void {
    const from = this.#offset;
    this.#pullTo(to);
    const animation = this.#pane.animate(
      { transform: [placed(from), placed(this.#offset)] },
      { duration: GLIDE_ms, easing: "cubic-bezier(0, 0, 0.3, 1)" },
    );
    this.#lay();
    this.#glide = { animation, from };
    animation.onfinish = () => {
      this.#glide = undefined;
      this.#comeToRest();
    };
  }

  #comeToRest(): void {
    if (this.#offset !== HOME) this.#rest = setTimeout(() => this.#drawAfresh(), REST_ms);
  }

  /** Lays the sheet where it has been pulled to. */
  #lay(): void {
    this.#pane.style.transform = placed(this.#offset);
  }

  /** Draws what is seen now into the middle of the sheet, and lays that where it belongs in the same frame. */
  #drawAfresh(): void {
    this.#moveHome();
    this.#map.once("render", () => this.#lay());
  }

  /** Has the map in the middle of the sheet what is seen now; from then on the sheet lies at home. */
  #moveHome(): void {
    const { clientWidth, clientHeight } = this.#map.getContainer();
    const { x, y } = this.#offset;
    const center = this.#map.unproject([clientWidth / 2 - x, clientHeight / 2 - y]);
    this.#offset = HOME;
    this.#map.jumpTo({ center });
  }
}

const placed = ({ x, y }: Offset) => `translate(${x}px, ${y}px)`;

function forget(touch: TouchEvent): void {
  touch.stopPropagation();
  touch.currentTarget?.dispatchEvent(new TouchEvent("touchcancel"));
}
