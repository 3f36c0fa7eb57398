import type { ComponentChildren } from "preact";
import { mapWords } from "../texts/map.ts";

/**
 * What a tap on the map has come to: under the map, or over what is seen of it while that ends below the screen. A
 * phone shows nothing else that the tap has changed.
 */
export function MapFoot(props: { children: ComponentChildren; onClose: () => void }) {
  return (
    <div class="map-foot">
      <div class="map-foot-words">{props.children}</div>
      <button type="button" class="plain" aria-label={mapWords.foot.close} onClick={props.onClose}>
        ✕
      </button>
    </div>
  );
}
