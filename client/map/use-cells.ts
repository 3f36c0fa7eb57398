import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import type { Cell } from "../../server/contract.ts";
import { api } from "../base/answers/api.ts";
import { isWide } from "./cell-features.ts";

export interface Cells {
  /** Null until they have come. */
  cells: readonly Cell[] | null;
  /** Whether the cell asked for by name has been looked for. */
  sought: boolean;
  /** Puts what lies in cells that stand for several in their place. */
  open: (wide: readonly string[]) => void;
}

/**
 * The community's cells. A large atlas tells the world in wide cells; what lies in one comes once somebody is near it, or
 * asks for a cell in it by name.
 * @param version of the fit that their mixtures are compared with
 */
export function useCells(version: string, named: string | undefined): Cells {
  const [world, setWorld] = useState<readonly Cell[] | null>(null);
  const [within, setWithin] = useState<ReadonlyMap<string, readonly Cell[]>>(new Map());
  const [soughtIn, setSoughtIn] = useState<string>();
  const asked = useRef(new Set<string>());
  useEffect(() => {
    let gone = false;
    api.cells().then(
      ({ cells }) => {
        if (gone) return;
        asked.current = new Set();
        setWithin(new Map());
        setWorld(cells);
      },
      () => {},
    );
    return () => {
      gone = true;
    };
  }, [version]);
  const openOne = async (cell: string) => {
    const sent = asked.current;
    if (sent.has(cell)) return;
    sent.add(cell);
    try {
      const { cells } = await api.cells(cell);
      // The world may have come anew meanwhile.
      if (sent === asked.current) setWithin((known) => new Map(known).set(cell, cells));
    } catch {
      sent.delete(cell);
    }
  };
  const wide = world?.filter(isWide) ?? [];
  useEffect(() => {
    if (!named || wide.length === 0) return;
    wideOf(named, wide)
      .then((found) => (found ? openOne(found) : undefined))
      // A name that is no cell's lies in none.
      .catch(() => {})
      .then(() => setSoughtIn(named));
  }, [named, world]);
  const cells = useMemo(
    () => world?.flatMap((cell) => within.get(cell.cell) ?? [cell]) ?? null,
    [world, within],
  );
  const open = (some: readonly string[]) => some.forEach((cell) => void openOne(cell));
  return { cells, sought: world !== null && (wide.length === 0 || soughtIn === named), open };
}

/** The one of these cells in which another lies. */
async function wideOf(cell: string, wide: readonly Cell[]): Promise<string | undefined> {
  const { cellToParent, getResolution } = await import("h3-js");
  return wide.find((one) => cellToParent(cell, getResolution(one.cell)) === one.cell)?.cell;
}
