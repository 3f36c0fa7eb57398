import { useEffect, useState } from "preact/hooks";
import type { ScreenContext } from "../../model/screen.ts";
import { api } from "../base/answers/api.ts";

/** Ground at the stated place, for screening. */
export function useTerrain(
  lat: number | undefined,
  lon: number | undefined,
): ScreenContext["terrain"] {
  const [terrain, setTerrain] = useState<ScreenContext["terrain"]>(null);
  useEffect(() => {
    setTerrain(null);
    if (lat === undefined || lon === undefined) return;
    let gone = false;
    // Without it one check less is made here; the atlas makes it again.
    api.elevation(lat, lon).then(
      (found) => !gone && setTerrain(found),
      () => {},
    );
    return () => {
      gone = true;
    };
  }, [lat, lon]);
  return terrain;
}
